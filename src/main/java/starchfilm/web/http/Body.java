package starchfilm.web.http;

import com.sun.net.httpserver.HttpExchange;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Consumer;
import org.apache.commons.fileupload.FileItemIterator;
import org.apache.commons.fileupload.FileItemStream;
import org.apache.commons.fileupload.FileUpload;
import org.apache.commons.fileupload.FileUploadBase.SizeLimitExceededException;
import org.apache.commons.fileupload.FileUploadException;
import org.apache.commons.fileupload.UploadContext;

/** A form as it was sent. */
record Body(Fields fields, List<SentFile> files) {
  /** The most a form without files may weigh: a trial file of 2 MB with every sign encoded. */
  static final int MOST_TEXT_BYTES = 8_000_000;

  /** The most a form with files may weigh. */
  static final int MOST_FILE_BYTES = 32_000_000;

  /** Beyond the limits this much is read and thrown away, so that the browser hears the answer. */
  private static final long MOST_DRAINED_BYTES = 300_000_000;

  private static final int DRAINED_AT_ONCE = 65_536;

  private static final int MOST_PARTS = 200;

  Body {
    files = List.copyOf(files);
  }

  /**
   * Reads a form.
   *
   * @param requireToken refuses fields that do not carry the token; asked before any file is kept
   * @throws IOException where the connection breaks
   */
  static Body read(HttpExchange exchange, Consumer<Fields> requireToken) throws IOException {
    String type =
        Optional.ofNullable(exchange.getRequestHeaders().getFirst("Content-Type")).orElse("");
    try {
      Body body =
          switch (type.toLowerCase(Locale.ROOT).split(";", 2)[0].strip()) {
            case "application/x-www-form-urlencoded" ->
                new Body(Fields.parse(text(exchange.getRequestBody())), List.of());
            case "multipart/form-data" -> parts(exchange, type, requireToken);
            default ->
                throw new HttpError(
                    415,
                    "Only forms are accepted here. Open the page and send the form from there.");
          };
      requireToken.accept(body.fields());
      return body;
    } catch (HttpError refused) {
      drain(exchange.getRequestBody());
      throw refused;
    }
  }

  private static String text(InputStream in) throws IOException {
    byte[] bytes = in.readNBytes(MOST_TEXT_BYTES + 1);
    if (bytes.length > MOST_TEXT_BYTES) {
      throw tooLarge(MOST_TEXT_BYTES);
    }
    return new String(bytes, StandardCharsets.UTF_8);
  }

  private static Body parts(HttpExchange exchange, String type, Consumer<Fields> requireToken) {
    FileUpload upload = new FileUpload();
    upload.setSizeMax(MOST_FILE_BYTES);
    upload.setFileCountMax(MOST_PARTS);
    Map<String, List<String>> texts = new LinkedHashMap<>();
    List<SentFile> files = new ArrayList<>();
    try {
      FileItemIterator parts =
          upload.getItemIterator(
              new Sent(exchange.getRequestBody(), type, declaredLength(exchange).orElse(-1)));
      for (int count = 1; parts.hasNext(); count++) {
        if (count > MOST_PARTS) {
          throw HttpError.malformed("The form has more than " + MOST_PARTS + " parts.");
        }
        FileItemStream part = parts.next();
        if (!part.isFormField()) {
          // Our forms send the token first.
          requireToken.accept(Fields.of(texts));
        }
        byte[] bytes;
        try (InputStream content = part.openStream()) {
          bytes = content.readAllBytes();
        }
        if (part.isFormField()) {
          texts
              .computeIfAbsent(part.getFieldName(), n -> new ArrayList<>())
              .add(new String(bytes, StandardCharsets.UTF_8));
        } else if (bytes.length > 0) {
          String name = Optional.ofNullable(part.getName()).orElse("");
          files.add(new SentFile(name, bytes));
        }
      }
    } catch (FileUploadException | IOException | IllegalStateException e) {
      throw e instanceof SizeLimitExceededException
              || e.getCause() instanceof SizeLimitExceededException
          ? tooLarge(MOST_FILE_BYTES)
          : HttpError.malformed(
              "The form was cut off or does not come from a browser; nothing was"
                  + " saved. Open the page again and send the form from there.");
    }
    return new Body(Fields.of(texts), files);
  }

  /** How long the form is by its header; empty where that does not say. */
  static OptionalLong declaredLength(HttpExchange exchange) {
    String length = exchange.getRequestHeaders().getFirst("Content-Length");
    try {
      return length == null
          ? OptionalLong.empty()
          : OptionalLong.of(Long.parseLong(length.strip()));
    } catch (NumberFormatException e) {
      throw HttpError.malformed("The length of the form is not a number.");
    }
  }

  private static HttpError tooLarge(int most) {
    return new HttpError(
        413,
        "Your upload is larger than "
            + most / 1_000_000
            + " MB; nothing was saved. Make the pictures smaller, or send them one by one.");
  }

  private static void drain(InputStream in) {
    try {
      long drained = 0;
      int read = 0;
      while (read >= 0 && drained < MOST_DRAINED_BYTES) {
        drained += read;
        read = in.read(new byte[DRAINED_AT_ONCE]);
      }
    } catch (IOException e) {
      // Closed already, or broken off by the sender: nothing is left to read.
      return;
    }
  }

  /** The request as the multipart reader wants it. */
  private record Sent(InputStream in, String type, long length) implements UploadContext {
    @Override
    public long contentLength() {
      return length;
    }

    @Override
    public String getCharacterEncoding() {
      return StandardCharsets.UTF_8.name();
    }

    @Override
    public String getContentType() {
      return type;
    }

    @Override
    @Deprecated
    public int getContentLength() {
      return (int) Math.min(length, Integer.MAX_VALUE);
    }

    @Override
    public InputStream getInputStream() {
      return in;
    }
  }
}
