package starchfilm.cli;

import java.util.List;
import picocli.CommandLine.Model.ArgGroupSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.Range;
import starchfilm.request.Entries;
import starchfilm.request.Field;
import starchfilm.request.Field.FieldSection;

/** What was written as options of a command. */
record OptionEntries(ParseResult parsed) implements Entries {
  private static final String WRITTEN = "yes";

  /** Gives a command the options of a request, each section under its heading. */
  static void add(List<FieldSection> sections, CommandSpec spec) {
    int order = 0;
    for (FieldSection section : sections) {
      List<OptionSpec> options = options(section);
      if (section.heading().isEmpty()) {
        options.forEach(spec::addOption);
        section.fields().stream()
            .filter(field -> field.option().isEmpty() && !field.param().isEmpty())
            .forEach(field -> spec.addPositional(file(field)));
      } else {
        ArgGroupSpec.Builder group =
            ArgGroupSpec.builder()
                .validate(section.isRepeatable())
                .exclusive(false)
                .multiplicity(section.isRepeatable() ? "0..*" : "0..1")
                .heading("%n" + section.heading() + ":%n")
                .order(order++);
        options.forEach(group::addArg);
        spec.addArgGroup(group.build());
      }
    }
  }

  /** The options of a section; a field that only pages have is none. */
  private static List<OptionSpec> options(FieldSection section) {
    return section.fields().stream()
        .filter(field -> !field.option().isEmpty())
        .map(OptionEntries::option)
        .toList();
  }

  /** What is named by its place, such as a file. */
  private static PositionalParamSpec file(Field field) {
    return PositionalParamSpec.builder()
        .type(List.class)
        .auxiliaryTypes(String.class)
        .arity(field.least() + ".." + (field.isRepeatable() ? "*" : String.valueOf(field.most())))
        .required(field.least() > 0)
        .paramLabel(field.param())
        .description(field.help())
        .build();
  }

  /** Every option takes a list, so that one that is written twice is reported, not lost. */
  private static OptionSpec option(Field field) {
    OptionSpec.Builder option =
        OptionSpec.builder(field.option().split(",", -1)).description(field.help());
    if (field.most() == 0) {
      return option.type(boolean.class).arity("0").build();
    }
    return option
        .type(List.class)
        .auxiliaryTypes(String.class)
        .arity(Range.valueOf(field.least() + ".." + field.most()).toString())
        .paramLabel(field.param())
        .fallbackValue(field.least() == 0 ? WRITTEN : "")
        .hideParamSyntax(true)
        .build();
  }

  static OptionEntries of(CommandSpec command) {
    return new OptionEntries(command.commandLine().getParseResult());
  }

  @Override
  public List<String> words(Field field) {
    if (field.option().isEmpty() && !field.param().isEmpty()) {
      return parsed.matchedPositionals().stream()
          .filter(file -> file.paramLabel().equals(field.param()))
          // It stands here once for each of its words, each time with all of them.
          .distinct()
          .flatMap(file -> file.stringValues().stream())
          .toList();
    }
    if (field.option().isEmpty() || !parsed.hasMatchedOption(field.name())) {
      return List.of();
    }
    return field.most() == 0 ? List.of(WRITTEN) : parsed.matchedOption(field.name()).stringValues();
  }

  @Override
  public List<Entries> times(FieldSection section) {
    return parsed.commandSpec().argGroups().stream()
        .filter(group -> String.valueOf(group.heading()).contains(section.heading()))
        .flatMap(group -> parsed.findMatches(group).stream())
        .flatMap(container -> container.matches().stream())
        .<Entries>map(match -> new Once(match, this))
        .toList();
  }

  /** One match of the options of a section. */
  private record Once(ParseResult.GroupMatch match, Entries whole) implements Entries {
    @Override
    public List<String> words(Field field) {
      return match.container().group().options().stream()
          .filter(option -> field.option().equals(option.longestName()))
          .flatMap(option -> match.matchedValues(option).stream())
          .flatMap(values -> ((List<?>) values).stream())
          .map(String::valueOf)
          .toList();
    }

    @Override
    public String name(Field field) {
      return whole.name(field);
    }
  }

  @Override
  public String name(Field field) {
    return field.name().isEmpty() ? field.param().replaceAll("[\\[\\].]", "") : field.name();
  }
}
