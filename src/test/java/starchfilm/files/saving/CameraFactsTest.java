package starchfilm.files.saving;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import starchfilm.casting.trial.Trial;
import starchfilm.files.json.Located;
import starchfilm.files.json.Located.ObjectValue;
import starchfilm.files.notebook.NotebookReader;
import starchfilm.files.saving.NotedLine.NoteKind;

class CameraFactsTest {
  private static final int LATITUDE = 48_137_154;
  private static final String TAKEN = "2026:04:20 09:15:00";

  @TempDir Path folder;

  private static byte[] picture(String format) throws IOException {
    BufferedImage image = new BufferedImage(20, 10, BufferedImage.TYPE_INT_RGB);
    image.setRGB(3, 4, 0x336699);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(image, format, out);
    return out.toByteArray();
  }

  /** What a telephone writes: the time in one directory, the place in another. */
  private static byte[] photo() throws IOException {
    ByteBuffer tiff = ByteBuffer.allocate(200).order(ByteOrder.LITTLE_ENDIAN);
    tiff.put(0, (byte) 'I').put(1, (byte) 'I').putShort(2, (short) 42).putInt(4, 8);
    tiff.putShort(8, (short) 2);
    entry(tiff, 10, 0x8769, 4, 1, 40);
    entry(tiff, 22, 0x8825, 4, 1, 90);
    tiff.putShort(40, (short) 1);
    entry(tiff, 42, 0x9003, 2, 20, 60);
    tiff.put(60, TAKEN.getBytes(StandardCharsets.US_ASCII));
    tiff.putShort(90, (short) 1);
    entry(tiff, 92, 2, 5, 3, 120);
    tiff.putInt(120, LATITUDE).putInt(124, 1_000_000);
    byte[] plain = picture("jpeg");
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(plain, 0, 2);
    segment(out, "Exif\0\0".getBytes(StandardCharsets.US_ASCII), tiff.array());
    segment(
        out,
        "http://ns.adobe.com/xap/1.0/\0".getBytes(StandardCharsets.US_ASCII),
        "<x exif:GPSLatitude='48,8.2N'/>".getBytes(StandardCharsets.US_ASCII));
    out.write(plain, 2, plain.length - 2);
    return out.toByteArray();
  }

  private static void entry(ByteBuffer tiff, int at, int tag, int kind, int count, int value) {
    tiff.putShort(at, (short) tag).putShort(at + 2, (short) kind);
    tiff.putInt(at + 4, count).putInt(at + 8, value);
  }

  private static void segment(ByteArrayOutputStream out, byte[] head, byte[] body) {
    int length = 2 + head.length + body.length;
    out.writeBytes(new byte[] {(byte) 0xFF, (byte) 0xE1, (byte) (length >> 8), (byte) length});
    out.writeBytes(head);
    out.writeBytes(body);
  }

  private static String latin(byte[] bytes) {
    return new String(bytes, StandardCharsets.ISO_8859_1);
  }

  private static String latitude() {
    return latin(ByteBuffer.allocate(4).order(ByteOrder.LITTLE_ENDIAN).putInt(LATITUDE).array());
  }

  @Test
  void takesThePlaceOutAndLeavesTimeAndPixels() throws IOException {
    byte[] photo = photo();
    assertThat(latin(photo)).contains(latitude()).contains("GPSLatitude");
    byte[] bare = CameraFacts.withoutPlace(photo);

    assertThat(latin(bare)).doesNotContain(latitude()).doesNotContain("GPSLatitude");
    assertThat(CameraFacts.takenAt(bare)).hasValue(LocalDateTime.of(2026, 4, 20, 9, 15));
    BufferedImage before = ImageIO.read(new ByteArrayInputStream(photo));
    BufferedImage after = ImageIO.read(new ByteArrayInputStream(bare));
    assertThat(after.getRGB(3, 4)).isEqualTo(before.getRGB(3, 4));
  }

  @Test
  void takesTheWordsOutOfAPng() throws IOException {
    byte[] png = picture("png");
    byte[] words = "Location\0here".getBytes(StandardCharsets.US_ASCII);
    ByteBuffer chunk = ByteBuffer.allocate(12 + words.length);
    chunk.putInt(words.length).put("tEXt".getBytes(StandardCharsets.US_ASCII)).put(words).putInt(0);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(png, 0, 33);
    out.writeBytes(chunk.array());
    out.write(png, 33, png.length - 33);

    assertThat(CameraFacts.withoutPlace(out.toByteArray())).isEqualTo(png);
  }

  @Test
  void neverFailsOnADamagedPicture() throws IOException {
    Random random = new Random(7);
    for (int i = 0; i < 3_000; i++) {
      byte[] photo = photo();
      for (int spoilt = 0; spoilt < 6; spoilt++) {
        photo[2 + random.nextInt(photo.length - 2)] = (byte) random.nextInt();
      }
      CameraFacts.takenAt(photo);
      assertThat(CameraFacts.withoutPlace(photo)).isNotEmpty();
    }
  }

  @Test
  void keepsADatedPictureWithItsCaptionAndWithoutItsPlaceUnlessAskedTo() throws Exception {
    Path file =
        Files.writeString(
            folder.resolve("plate.json"),
            """
            {"poured_at": "2026-04-19T10:00",
             "recipe": {"starch": {"kind": "potato", "mass_g": 20}, "water": {"mass_g": 360}},
             "pour": {"plate": {"length_mm": 300, "width_mm": 200}, "wet_thickness_mm": 2.5}}
            """);
    List<NewPhoto.Chosen> chosen = List.of(new NewPhoto.Chosen("phone.jpg", photo()));
    Optional<LocalDateTime> poured = Optional.of(LocalDateTime.of(2026, 4, 19, 10, 0));
    new NewPhoto(file, poured, false).keep(chosen, Optional.of("a crack"), OptionalInt.empty());
    new NewPhoto(file, poured, true).keep(chosen, Optional.empty(), OptionalInt.empty());

    Trial trial = NotebookReader.read(List.of(file)).trials().get(0);
    List<Path> photos = trial.seen().photos();
    assertThat(latin(Files.readAllBytes(photos.get(0)))).doesNotContain(latitude());
    assertThat(latin(Files.readAllBytes(photos.get(1)))).contains(latitude());
    assertThat(trial.seen().photoNotes().get(photos.get(0)).caption()).hasValue("a crack");
    assertThat(trial.seen().photoNotes().get(photos.get(0)).takenAtS()).hasValue(23.25 * 3_600);
  }

  @Test
  void aPictureThatLiesThereIsNotedAsACopyWithoutItsPlaceAndStaysAsItWas() throws Exception {
    Path file = folder.resolve("plate.json");
    Path phone = Files.write(folder.resolve("phone.jpg"), photo());
    Files.write(folder.resolve("scan.jpg"), picture("jpeg"));
    List<Note> notes =
        List.of(
            new Note.Added(NoteKind.PHOTO, said("phone.jpg")),
            new Note.Added(NoteKind.PHOTO, said("scan.jpg")),
            new Note.Added(NoteKind.PHOTO, said("missing.jpg")));
    Optional<LocalDateTime> poured = Optional.of(LocalDateTime.of(2026, 4, 19, 10, 0));

    NewPhoto.NamedPhotos named = new NewPhoto(file, poured, false).named(notes);

    assertThat(named.notes())
        .containsExactly(
            new Note.Added(
                NoteKind.PHOTO,
                said("plate-photo-1.jpg").with("at", Located.text("2026-04-20T09:15"))),
            notes.get(1),
            notes.get(2));
    assertThat(latin(Files.readAllBytes(folder.resolve("plate-photo-1.jpg"))))
        .doesNotContain(latitude());
    assertThat(phone).hasBinaryContent(photo());
    named.discard();
    assertThat(folder.resolve("plate-photo-1.jpg")).doesNotExist();
    assertThat(new NewPhoto(file, poured, true).named(notes).copies()).isEmpty();
  }

  private static ObjectValue said(String file) {
    return Located.object().with("file", file);
  }
}
