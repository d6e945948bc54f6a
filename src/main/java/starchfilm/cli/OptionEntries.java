package starchfilm.cli;

import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgGroupSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.Range;
import starchfilm.request.Entries;
import starchfilm.request.Field;

/** What was written as options of a command. */
record OptionEntries(ParseResult parsed) implements Entries {
  private static final String WRITTEN = "yes";

  /** Gives a command the options of a request, each section under its heading. */
  static CommandLine on(Object command, List<Field.Section> sections) {
    CommandLine line = new CommandLine(command);
    CommandSpec spec = line.getCommandSpec();
    for (Field.Section section : sections) {
      if (section.heading().isEmpty()) {
        section.fields().forEach(field -> spec.addOption(option(field)));
      } else {
        ArgGroupSpec.Builder group =
            ArgGroupSpec.builder()
                .validate(false)
                .heading("%n" + section.heading() + ":%n")
                .order(sections.indexOf(section));
        section.fields().forEach(field -> group.addArg(option(field)));
        spec.addArgGroup(group.build());
      }
    }
    return line;
  }

  /** Every option takes a list, so that one that is written twice is told, not lost. */
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
        .hideParamSyntax(true)
        .build();
  }

  static OptionEntries of(CommandSpec command) {
    return new OptionEntries(command.commandLine().getParseResult());
  }

  @Override
  public List<String> words(Field field) {
    if (field.option().isEmpty() || !parsed.hasMatchedOption(field.name())) {
      return List.of();
    }
    return field.most() == 0 ? List.of(WRITTEN) : parsed.matchedOption(field.name()).stringValues();
  }

  @Override
  public String name(Field field) {
    return field.name();
  }
}
