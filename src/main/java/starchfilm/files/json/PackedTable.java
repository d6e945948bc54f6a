package starchfilm.files.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.Locale;

/**
 * JSON that is packed with the program, read into the records its rows stand for. Constants stand
 * in it by their names in lower case, with spaces; where several may stand, one may stand alone;
 * every component of a record must be there.
 */
public final class PackedTable {
  private static final JsonMapper JSON =
      JsonMapper.builder()
          .propertyNamingStrategy(PropertyNamingStrategies.SNAKE_CASE)
          .enumNamingStrategy(name -> name.toLowerCase(Locale.ROOT).replace('_', ' '))
          .enable(DeserializationFeature.FAIL_ON_MISSING_CREATOR_PROPERTIES)
          .enable(DeserializationFeature.ACCEPT_SINGLE_VALUE_AS_ARRAY)
          .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
          // The records are all there is to know; looking for more slows the first answer.
          .disable(
              MapperFeature.USE_ANNOTATIONS,
              MapperFeature.AUTO_DETECT_GETTERS,
              MapperFeature.AUTO_DETECT_IS_GETTERS)
          .build();

  private PackedTable() {}

  /**
   * Reads a table.
   *
   * @param kind the record that the whole of it is
   * @throws IllegalArgumentException where it is not JSON, a field is missing or a name is not
   *     known; the message says in which row
   */
  public static <T> T read(String json, Class<T> kind) {
    try {
      return JSON.readValue(json, kind);
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException("a packed table: " + e.getMessage(), e);
    }
  }
}
