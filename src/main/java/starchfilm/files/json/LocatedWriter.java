package starchfilm.files.json;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.PrettyPrinter;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Map;
import starchfilm.files.json.Located.ListValue;
import starchfilm.files.json.Located.Member;
import starchfilm.files.json.Located.NumberValue;
import starchfilm.files.json.Located.ObjectValue;
import starchfilm.files.json.Located.TextValue;
import starchfilm.files.json.Located.WordValue;

/** Writes a tree as JSON text; numbers keep the digits they were written with. */
public final class LocatedWriter {
  private LocatedWriter() {}

  /** A value in one line, as it stands within a file. */
  public static String line(Located value) {
    Separators separators =
        Separators.createDefaultInstance()
            .withObjectFieldValueSpacing(Separators.Spacing.AFTER)
            .withObjectEntrySpacing(Separators.Spacing.AFTER)
            .withArrayValueSpacing(Separators.Spacing.AFTER)
            .withObjectEmptySeparator("")
            .withArrayEmptySeparator("");
    DefaultPrettyPrinter printer = new DefaultPrettyPrinter(separators);
    printer.indentObjectsWith(DefaultPrettyPrinter.NopIndenter.instance);
    printer.indentArraysWith(DefaultPrettyPrinter.NopIndenter.instance);
    return written(value, printer);
  }

  /** The text of a whole file. */
  public static String lines(Located value) {
    DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
    printer.indentObjectsWith(new DefaultIndenter("  ", "\n"));
    return written(value, printer) + "\n";
  }

  private static String written(Located value, PrettyPrinter printer) {
    StringWriter text = new StringWriter();
    try (JsonGenerator out = LocatedReader.FACTORY.createGenerator(text)) {
      out.setPrettyPrinter(printer);
      write(value, out);
    } catch (IOException e) {
      throw new UncheckedIOException("a tree made in memory could not be written", e);
    }
    return text.toString();
  }

  private static void write(Located value, JsonGenerator out) throws IOException {
    if (value instanceof ObjectValue object) {
      out.writeStartObject();
      for (Map.Entry<String, Member> member : object.members().entrySet()) {
        out.writeFieldName(member.getKey());
        write(member.getValue().value(), out);
      }
      out.writeEndObject();
    } else if (value instanceof ListValue list) {
      out.writeStartArray();
      for (Located entry : list.entries()) {
        write(entry, out);
      }
      out.writeEndArray();
    } else if (value instanceof TextValue text) {
      out.writeString(text.text());
    } else if (value instanceof NumberValue number) {
      out.writeNumber(number.literal());
    } else if (value instanceof WordValue word) {
      out.writeRawValue(word.quoted());
    }
  }
}
