package starchfilm.learning;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.io.JsonEOFException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonDeserializer;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.JsonSerializer;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.jspecify.annotations.Nullable;
import starchfilm.files.json.FileText;
import starchfilm.files.json.Located.Place;
import starchfilm.files.json.UnreadableFileException;
import starchfilm.learning.summary.Learnt;
import starchfilm.numerics.evidence.Estimate;

/**
 * The content of a workshop file: first what a reader wants to see, then the likelihoods that later
 * forecasts are computed from. The same content gives the same bytes on every machine.
 *
 * @param about says who writes the file
 * @param format which layout this is
 * @param learnt what is shown
 * @param plates from weighings
 * @param strips from pull tests
 * @param learntFrom the trials it was learnt from
 */
record WorkshopFile(
    String about,
    int format,
    Learnt learnt,
    List<PlateLikelihood> plates,
    List<StripLikelihood> strips,
    List<TrialFacts> learntFrom) {
  static final String FIX = "run the command learn again on this folder";

  private static final int FORMAT = 2;
  private static final String ABOUT =
      "Written by the command learn from the trials in this folder: changes"
          + " made by hand are lost the next time. Forecasts read the parts called"
          + " plates and strips.";
  private static final String WANTED = "a file as learn writes it";
  private static final long MAX_BYTES = 20_000_000;

  /** More than any figure of a likelihood, and few enough that their products stay finite. */
  private static final double MOST = 1e15;

  /** Twelve figures: far more than is known, and few enough to be the same everywhere. */
  private static final MathContext FIGURES = new MathContext(12);

  private static final ObjectMapper JSON = mapper();

  WorkshopFile {
    if (format != FORMAT) {
      throw new IllegalArgumentException("format " + format);
    }
    plates = List.copyOf(plates);
    strips = List.copyOf(strips);
    learntFrom = List.copyOf(learntFrom);
  }

  WorkshopFile(
      Learnt learnt,
      List<PlateLikelihood> plates,
      List<StripLikelihood> strips,
      List<TrialFacts> learntFrom) {
    this(ABOUT, FORMAT, learnt, plates, strips, learntFrom);
  }

  String text() {
    DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
    printer.indentObjectsWith(new DefaultIndenter("  ", "\n"));
    try {
      return JSON.writer(printer).writeValueAsString(this) + "\n";
    } catch (JsonProcessingException impossible) {
      throw new IllegalStateException("records in memory cannot fail", impossible);
    }
  }

  /** Reads a file; whatever is not as {@link #text} writes it is refused. */
  static WorkshopFile read(Path file) throws UnreadableFileException {
    try {
      return parsed(FileText.utf8(FileText.bytes(file, MAX_BYTES)).strip());
    } catch (UnreadableFileException e) {
      String mend = Files.isRegularFile(file) ? FIX : "rename or move it, then " + FIX;
      throw new UnreadableFileException(e.place(), e.given(), e.allowed(), mend);
    }
  }

  private static WorkshopFile parsed(String text) throws UnreadableFileException {
    try {
      WorkshopFile read = JSON.readValue(text, WorkshopFile.class);
      if (read == null) {
        throw new UnreadableFileException("null", WANTED, FIX);
      }
      return read.teachable();
    } catch (JsonProcessingException e) {
      JsonLocation at = e.getLocation();
      int line = at == null ? 0 : at.getLineNr();
      throw new UnreadableFileException(Place.of(line), what(e, text), WANTED, FIX);
    }
  }

  private WorkshopFile teachable() throws UnreadableFileException {
    for (int i = 0; i < plates.size(); i++) {
      if (!plates.get(i).isTeachable()) {
        throw new UnreadableFileException(
            "plates[" + (i + 1) + "]: figures that no weighings can teach", WANTED, FIX);
      }
    }
    return this;
  }

  /** The field that is wrong, without the library's words, which name classes. */
  private static String what(JsonProcessingException e, String text) {
    String field =
        e instanceof JsonMappingException mapping
            ? mapping.getPath().stream()
                .map(
                    step ->
                        step.getFieldName() == null
                            ? "[" + (step.getIndex() + 1) + "]"
                            : "." + step.getFieldName())
                .collect(Collectors.joining())
            : "";
    boolean isCut = text.startsWith("{") && !text.endsWith("}");
    if (isCut || e.getCause() instanceof JsonEOFException) {
      return "a file that ends early";
    }
    return field.isEmpty() ? "another format" : "another value of " + field.substring(1);
  }

  private static ObjectMapper mapper() {
    SimpleModule module = new SimpleModule();
    for (Class<Double> figure : List.of(double.class, Double.class)) {
      module.addSerializer(figure, written(WorkshopFile::rounded));
      module.addDeserializer(figure, read(BigDecimal.class, WorkshopFile::bounded));
    }
    module.addDeserializer(Estimate.class, read(Logarithm.class, Logarithm::estimate));
    module.addSerializer(Optional.class, written(WorkshopFile::nullable));
    module.addDeserializer(Optional.class, new OptionalEstimate());
    module.addSerializer(RealVector.class, written(row -> boxed(row.toArray())));
    module.addDeserializer(RealVector.class, read(Double[].class, WorkshopFile::row));
    module.addSerializer(RealMatrix.class, written(WorkshopFile::triangle));
    module.addDeserializer(RealMatrix.class, read(RealVector[].class, WorkshopFile::symmetric));
    return JsonMapper.builder()
        .addModule(module)
        .propertyNamingStrategy(PropertyNamingStrategies.SNAKE_CASE)
        .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
        .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
        .enable(DeserializationFeature.FAIL_ON_MISSING_CREATOR_PROPERTIES)
        .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
        .enable(DeserializationFeature.FAIL_ON_NUMBERS_FOR_ENUMS)
        .disable(DeserializationFeature.ACCEPT_FLOAT_AS_INT)
        .disable(MapperFeature.AUTO_DETECT_IS_GETTERS)
        .disable(MapperFeature.ALLOW_COERCION_OF_SCALARS)
        .build();
  }

  private static <T> JsonSerializer<T> written(Function<T, @Nullable Object> as) {
    return new JsonSerializer<>() {
      @Override
      public void serialize(T value, JsonGenerator out, SerializerProvider all) throws IOException {
        all.defaultSerializeValue(as.apply(value), out);
      }
    };
  }

  private static <F, T> JsonDeserializer<T> read(Class<F> from, Function<F, T> as) {
    return new JsonDeserializer<>() {
      @Override
      public T deserialize(JsonParser in, DeserializationContext context) throws IOException {
        F value = context.readValue(in, from);
        try {
          return as.apply(value);
        } catch (IllegalArgumentException e) {
          throw JsonMappingException.from(in, "not as written", e);
        }
      }

      @Override
      public T getNullValue(DeserializationContext context) throws JsonMappingException {
        throw JsonMappingException.from(context, "not as written");
      }
    };
  }

  /**
   * Every estimate of this file; the exponential of one beyond 600, times a figure, is infinite.
   */
  private record Logarithm(double value, double sd) {
    Estimate estimate() {
      if (!(Math.abs(value) <= 600)) {
        throw new IllegalArgumentException("out of range");
      }
      return new Estimate(value, sd);
    }
  }

  private static final class OptionalEstimate extends JsonDeserializer<Optional<?>> {
    @Override
    public Optional<?> deserialize(JsonParser in, DeserializationContext context)
        throws IOException {
      return Optional.of(context.readValue(in, Estimate.class));
    }

    @Override
    public Optional<?> getNullValue(DeserializationContext context) {
      return Optional.empty();
    }
  }

  private static @Nullable Object nullable(Optional<?> found) {
    return found.orElse(null);
  }

  private static BigDecimal rounded(Double value) {
    BigDecimal rounded = new BigDecimal(value).round(FIGURES);
    return rounded.signum() == 0 ? BigDecimal.ZERO : rounded.stripTrailingZeros();
  }

  private static Double bounded(BigDecimal value) {
    if (!(Math.abs(value.doubleValue()) <= MOST)) {
      throw new IllegalArgumentException("out of range");
    }
    return value.doubleValue();
  }

  private static List<Double> boxed(double[] row) {
    return Arrays.stream(row).boxed().toList();
  }

  private static RealVector row(Double[] row) {
    return MatrixUtils.createRealVector(
        Arrays.stream(row).mapToDouble(Double::doubleValue).toArray());
  }

  /** The lower triangle of a symmetric matrix. */
  private static List<List<Double>> triangle(RealMatrix matrix) {
    return IntStream.range(0, matrix.getRowDimension())
        .mapToObj(i -> boxed(Arrays.copyOf(matrix.getRow(i), i + 1)))
        .toList();
  }

  private static RealMatrix symmetric(RealVector[] rows) {
    RealMatrix matrix = MatrixUtils.createRealMatrix(rows.length, rows.length);
    for (int i = 0; i < rows.length; i++) {
      if (rows[i].getDimension() != i + 1) {
        throw new IllegalArgumentException("no triangle");
      }
      for (int j = 0; j <= i; j++) {
        matrix.setEntry(i, j, rows[i].getEntry(j));
        matrix.setEntry(j, i, rows[i].getEntry(j));
      }
    }
    return matrix;
  }
}
