package starchfilm.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PhotoFrameTest {
  @TempDir private Path folder;

  @Test
  void scalesALargePhotoDown() throws IOException {
    PhotoFrame frame = PhotoFrame.of(jpeg("wide.jpg", picture(3000, 1500), 1));

    assertThat(frame.words()).isEqualTo("wide.jpg");
    assertThat(decoded(frame).getWidth()).isEqualTo(720);
    assertThat(decoded(frame).getHeight()).isEqualTo(360);
  }

  @Test
  void leavesASmallPhotoItsSize() throws IOException {
    assertThat(decoded(PhotoFrame.of(jpeg("small.jpg", picture(90, 60), 1))).getWidth())
        .isEqualTo(90);
  }

  /**
   * The stored picture is red in its upper left quarter and white elsewhere. Where the red has to
   * end up follows from the names Exif gives the eight values, such as "right-top" for 6: the
   * stored first row is the right side, the stored first column the top.
   */
  @ParameterizedTest
  @CsvSource({
    "1, 80, 40, left, top", "2, 80, 40, right, top", "3, 80, 40, right, bottom",
    "4, 80, 40, left, bottom", "5, 40, 80, left, top", "6, 40, 80, right, top",
    "7, 40, 80, right, bottom", "8, 40, 80, left, bottom"
  })
  void turnsThePhotoTheWayTheCameraWasHeld(
      int orientation, int width, int height, String side, String end) throws IOException {
    BufferedImage upright =
        decoded(PhotoFrame.of(jpeg("turned.jpg", picture(80, 40), orientation)));

    assertThat(upright.getWidth()).isEqualTo(width);
    assertThat(upright.getHeight()).isEqualTo(height);
    int x = side.equals("left") ? width / 4 : 3 * width / 4;
    int y = end.equals("top") ? height / 4 : 3 * height / 4;
    assertThat(isRed(upright, x, y)).isTrue();
    assertThat(isRed(upright, width - 1 - x, y)).isFalse();
    assertThat(isRed(upright, x, height - 1 - y)).isFalse();
  }

  @Test
  void carriesNothingOfTheFileButThePicture() throws IOException {
    PhotoFrame frame = PhotoFrame.of(jpeg("secret.jpg", picture(80, 40), 6));

    String bytes =
        new String(
            Base64.getDecoder().decode(frame.dataUri().split(",", -1)[1]),
            StandardCharsets.ISO_8859_1);
    assertThat(bytes).doesNotContain("Exif").doesNotContain("SecretPlace");
  }

  @Test
  void saysWhyThereIsNoPicture() throws IOException {
    Path text = Files.writeString(folder.resolve("notes.jpg"), "this is no picture");
    Path cut = jpeg("cut.jpg", picture(800, 400), 1);
    Files.write(cut, java.util.Arrays.copyOf(Files.readAllBytes(cut), 40));

    assertThat(PhotoFrame.of(text))
        .isEqualTo(
            new PhotoFrame(
                Optional.empty(),
                "notes.jpg cannot be read as a picture (a phone's own format?), or has"
                    + " too many pixels; save it as JPEG."));
    assertThat(PhotoFrame.of(cut).dataUri()).isEmpty();
    assertThat(PhotoFrame.of(folder.resolve("gone.jpg")))
        .isEqualTo(
            new PhotoFrame(
                Optional.empty(),
                "gone.jpg is damaged, or its permissions do not allow reading it."));
  }

  private static BufferedImage picture(int width, int height) {
    BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    for (int x = 0; x < width; x++) {
      for (int y = 0; y < height; y++) {
        boolean quarter = x < width / 2 && y < height / 2;
        picture.setRGB(x, y, (quarter ? Color.RED : Color.WHITE).getRGB());
      }
    }
    return picture;
  }

  /** A JPEG file with an Exif segment put in after its start, big-endian, one entry. */
  private Path jpeg(String name, BufferedImage picture, int orientation) throws IOException {
    ByteArrayOutputStream plain = new ByteArrayOutputStream();
    ImageIO.write(picture, "jpeg", plain);
    ByteArrayOutputStream exif = new ByteArrayOutputStream();
    exif.writeBytes("Exif\0\0MM\0\52\0\0\0\10".getBytes(StandardCharsets.ISO_8859_1));
    exif.writeBytes(new byte[] {0, 1, 1, 18, 0, 3, 0, 0, 0, 1, 0, (byte) orientation, 0, 0});
    exif.writeBytes(new byte[] {0, 0, 0, 0});
    exif.writeBytes("SecretPlace".getBytes(StandardCharsets.US_ASCII));
    ByteArrayOutputStream whole = new ByteArrayOutputStream();
    byte[] bytes = plain.toByteArray();
    // After the JFIF segment: the decoder wants that one first.
    int jfifEnd = 4 + (bytes[4] << 8 | bytes[5] & 255);
    whole.write(bytes, 0, jfifEnd);
    whole.writeBytes(new byte[] {(byte) 0xFF, (byte) 0xE1, 0, (byte) (exif.size() + 2)});
    whole.writeBytes(exif.toByteArray());
    whole.write(bytes, jfifEnd, bytes.length - jfifEnd);
    return Files.write(folder.resolve(name), whole.toByteArray());
  }

  private static BufferedImage decoded(PhotoFrame frame) throws IOException {
    assertThat(frame.dataUri()).startsWith("data:image/jpeg;base64,");
    return ImageIO.read(
        new ByteArrayInputStream(Base64.getDecoder().decode(frame.dataUri().split(",", -1)[1])));
  }

  private static boolean isRed(BufferedImage picture, int x, int y) {
    Color colour = new Color(picture.getRGB(x, y));
    return colour.getRed() > 180 && colour.getGreen() < 100;
  }
}
