package starchfilm.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;

/**
 * A {@link RunningSite} of the test's own, over a new folder; what is served before all tests of a
 * class is one for all of them. It stops, and the folder goes, when the test is over.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.PARAMETER)
@ExtendWith(Served.Starting.class)
@interface Served {
  /** What lies in the folder. */
  Content[] value() default {};

  /** What a folder may hold. */
  enum Content {
    /** The invented garden. */
    GARDEN {
      @Override
      void putInto(Path folder) throws IOException {
        RunningSite.copyGarden(folder);
      }
    },

    /** One trial of the garden, long ended. */
    ENDED {
      @Override
      void putInto(Path folder) throws IOException {
        Files.copy(Path.of("formulations/garden/4-blend.json"), folder.resolve("4-blend.json"));
      }
    },

    /** A plate that is drying. */
    DRYING {
      @Override
      void putInto(Path folder) throws IOException {
        DryingTrial.in(folder);
      }
    };

    abstract void putInto(Path folder) throws IOException;
  }

  /** Starts the site when it is asked for. */
  final class Starting implements ParameterResolver {
    private record Started(RunningSite site) implements AutoCloseable {
      @Override
      public void close() {
        site.close();
        Chrome.deleteAll(site.folder().getParent().toFile());
      }
    }

    @Override
    public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
      return parameter.getParameter().getType() == RunningSite.class;
    }

    @Override
    public RunningSite resolveParameter(ParameterContext parameter, ExtensionContext context) {
      Content[] contents = parameter.findAnnotation(Served.class).orElseThrow().value();
      return context
          .getStore(ExtensionContext.Namespace.create(Served.class))
          .getOrComputeIfAbsent("site", key -> new Started(start(contents)), Started.class)
          .site();
    }

    private static RunningSite start(Content... contents) {
      try {
        Path around = Files.createTempDirectory("starchfilm-site-");
        Path folder = Files.createDirectory(around.resolve("notebook"));
        for (Content content : contents) {
          content.putInto(folder);
        }
        return RunningSite.over(folder);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }
}
