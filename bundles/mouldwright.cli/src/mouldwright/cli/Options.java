package mouldwright.cli;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.TypeConversionException;

/** Options and parameters as several subcommands have them. */
final class Options {

    private Options() { }

    /** An option that takes one of some words. */
    static OptionSpec choice(String name, String words, String description, List<String> choices) {
        ITypeConverter<String> converter = value -> {
            if (!choices.contains(value)) {
                throw new TypeConversionException("'" + value + "' is none of " + String.join(", ", choices));
            }
            return value;
        };
        return OptionSpec.builder(name).paramLabel(words).type(String.class).converters(converter).description(description).build();
    }

    /** An option that takes a text. */
    static OptionSpec text(String name, String label, String description) {
        return OptionSpec.builder(name).paramLabel(label).type(String.class).description(description).build();
    }

    /** An option that is there or not. */
    static OptionSpec flag(String name, String description) {
        return OptionSpec.builder(name).type(boolean.class).description(description).build();
    }

    /** A parameter that must be given. */
    static PositionalParamSpec parameter(int index, String label, String description) {
        return PositionalParamSpec.builder().index(String.valueOf(index)).arity("1").required(true).paramLabel(label).type(String.class)
                .description(description).build();
    }

    /** A parameter that may be left out. */
    static PositionalParamSpec optional(int index, String label, String description) {
        return PositionalParamSpec.builder().index(String.valueOf(index)).arity("0..1").paramLabel(label).type(String.class).description(description).build();
    }

    /** Files, one at least. */
    static PositionalParamSpec files(String description) {
        return PositionalParamSpec.builder().index("0..*").arity("1..*").required(true).paramLabel("FILE").type(List.class).auxiliaryTypes(String.class)
                .description(description).build();
    }

    /** The value of an option; empty if it was not given. */
    static Optional<String> value(ParseResult parsed, String name) {
        return Optional.ofNullable(parsed.matchedOptionValue(name, (String) null));
    }

    /** Whether a flag was given. */
    static boolean given(ParseResult parsed, String name) {
        return parsed.matchedOptionValue(name, false);
    }
}
