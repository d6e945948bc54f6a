package starchfilm.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Base64;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a browser without a screen does with the pages at an address. */
final class PageClient {
  /** One transparent pixel, PNG. */
  static final byte[] PIXEL =
      Base64.getDecoder()
          .decode(
              "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==");

  private final String address;
  private final HttpClient client =
      HttpClient.newBuilder().connectTimeout(Duration.ofSeconds(10)).build();

  /** What the pages at the address gave to be kept. */
  private volatile String cookie = "";

  PageClient(String address) {
    this.address = address;
  }

  HttpResponse<String> get(String path, String... headers) {
    HttpRequest.Builder request = HttpRequest.newBuilder(uri(path)).GET();
    return send(headers.length == 0 ? request : request.headers(headers));
  }

  /** A page that may take its time to be made. */
  HttpResponse<String> getMade(String path) {
    HttpResponse<String> answer = get(path);
    for (int i = 0; i < 60 && answer.headers().firstValue("Refresh").isPresent(); i++) {
      answer = get(path);
    }
    return answer;
  }

  /** A form as our own page sends it: with the token, from our own origin. */
  HttpResponse<String> post(String path, String... fields) {
    String[] marked = new String[fields.length + 2];
    System.arraycopy(fields, 0, marked, 0, fields.length);
    marked[fields.length] = "token";
    marked[fields.length + 1] = token();
    return postBare(path, List.of(), marked);
  }

  HttpResponse<String> postBare(String path, List<String> headers, String... fields) {
    StringBuilder body = new StringBuilder();
    for (int i = 0; i < fields.length; i += 2) {
      body.append(i == 0 ? "" : "&").append(encoded(fields[i])).append('=');
      body.append(encoded(fields[i + 1]));
    }
    HttpRequest.Builder request =
        HttpRequest.newBuilder(uri(path))
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(HttpRequest.BodyPublishers.ofString(body.toString()));
    return send(headers.isEmpty() ? request : request.headers(headers.toArray(String[]::new)));
  }

  /** What a page hides in its forms. */
  String token() {
    return hidden(get("/trials").body(), "token");
  }

  static String hidden(String page, String field) {
    Matcher matcher =
        Pattern.compile("name=\"" + Pattern.quote(field) + "\" value=\"([^\"]*)\"").matcher(page);
    assertThat(matcher.find()).as("hidden field " + field).isTrue();
    return matcher.group(1);
  }

  /** A picture as the form on a trial's page sends it. */
  HttpResponse<String> postPhoto(String file, String token, String name, byte[] content) {
    return postFile("/trial/photo", "photo", file, token, name, content);
  }

  /** A file as a form sends it. */
  HttpResponse<String> postFile(
      String path, String input, String file, String token, String name, byte[] content) {
    ByteArrayOutputStream body = new ByteArrayOutputStream();
    for (String[] field : new String[][] {{"token", token}, {"file", file}, {"kind", input}}) {
      body.writeBytes(part("\"" + field[0] + "\"", "", field[1].getBytes(StandardCharsets.UTF_8)));
    }
    body.writeBytes(
        part(
            "\"" + input + "\"; filename=\"" + name + "\"",
            "Content-Type: image/png\r\n",
            content));
    body.writeBytes("--cut--\r\n".getBytes(StandardCharsets.UTF_8));
    return send(
        HttpRequest.newBuilder(uri(path))
            .header("Content-Type", "multipart/form-data; boundary=cut")
            .POST(HttpRequest.BodyPublishers.ofByteArray(body.toByteArray())));
  }

  private static byte[] part(String name, String header, byte[] content) {
    ByteArrayOutputStream part = new ByteArrayOutputStream();
    part.writeBytes(
        ("--cut\r\nContent-Disposition: form-data; name=" + name + "\r\n" + header + "\r\n")
            .getBytes(StandardCharsets.UTF_8));
    part.writeBytes(content);
    part.writeBytes("\r\n".getBytes(StandardCharsets.UTF_8));
    return part.toByteArray();
  }

  /** A page as it is read: a figure's unbreakable blank is a blank. */
  private static HttpResponse.BodySubscriber<String> asRead() {
    return HttpResponse.BodySubscribers.mapping(
        HttpResponse.BodySubscribers.ofString(StandardCharsets.UTF_8),
        body -> body.replace('\u00A0', ' '));
  }

  HttpResponse<String> send(HttpRequest.Builder request) {
    boolean isHere =
        address.startsWith("http://" + request.copy().build().uri().getAuthority() + "/");
    if (isHere && !cookie.isEmpty()) {
      request.header("Cookie", cookie);
    }
    try {
      HttpResponse<String> answer =
          client.send(request.timeout(Duration.ofSeconds(60)).build(), info -> asRead());
      if (isHere) {
        answer.headers().firstValue("Set-Cookie").ifPresent(set -> cookie = set.split(";", 2)[0]);
      }
      return answer;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }

  URI uri(String path) {
    return URI.create(address.substring(0, address.length() - 1) + path);
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }
}
