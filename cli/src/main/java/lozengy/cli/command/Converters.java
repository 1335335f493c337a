package lozengy.cli.command;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import lozengy.model.input.Quantity;
import lozengy.model.layout.Setting;
import lozengy.model.making.WorkOrder;
import lozengy.model.progress.Anchor;
import lozengy.report.chart.ChartOptions;
import lozengy.report.print.Paper;
import lozengy.solver.gallery.GalleryLook;
import lozengy.solver.pack.PackGoal;
import picocli.CommandLine;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads the values of options, and says in plain words what is wrong with one. */
final class Converters {

  /**
   * A converter. It is a class because picocli's are so old that the launcher's archive of classes
   * cannot hold an interface of theirs, nor anything that implements it, once a lambda does.
   */
  private record Converter<T>(Function<String, T> read) implements ITypeConverter<T> {
    @Override
    public T convert(String text) {
      return read.apply(text);
    }
  }

  private Converters() {}

  static void register(CommandLine commandLine) {
    commandLine.registerConverter(Setting.class, word(Setting.values(), Setting::word));
    commandLine.registerConverter(ReportForm.class, word(ReportForm.values(), ReportForm::word));
    commandLine.registerConverter(
        ChartOptions.Signs.class,
        word(ChartOptions.Signs.values(), signs -> signs.name().toLowerCase(Locale.ROOT)));
    commandLine.registerConverter(
        PackGoal.class, word(PackGoal.values(), goal -> goal.name().toLowerCase(Locale.ROOT)));
    commandLine.registerConverter(Paper.class, word(Paper.values(), Paper::word));
    commandLine.registerConverter(LocalDate.class, new Converter<>(Converters::date));
    commandLine.registerConverter(PictureWidth.class, new Converter<>(Converters::width));
    commandLine.registerConverter(WorkOrder.class, word(WorkOrder.values(), WorkOrder::word));
    commandLine.registerConverter(GalleryLook.class, word(GalleryLook.values(), GalleryLook::word));
    commandLine.registerConverter(Anchor.class, word(Anchor.values(), Anchor::word));
    commandLine.registerConverter(int.class, number(Integer::valueOf, "a whole number"));
    commandLine.registerConverter(Integer.class, number(Integer::valueOf, "a whole number"));
    commandLine.registerConverter(Long.class, number(Long::valueOf, "a whole number"));
    commandLine.registerConverter(long.class, number(Long::valueOf, "a whole number"));
    commandLine.registerConverter(Double.class, new Converter<>(Converters::number));
    commandLine.registerConverter(Percent.class, new Converter<>(Converters::percent));
  }

  /** Reads one of a few words, in upper or lower case. */
  static <T> ITypeConverter<T> word(T[] values, Function<T, String> word) {
    return new Converter<>(
        text ->
            Arrays.stream(values)
                .filter(each -> word.apply(each).equals(text.toLowerCase(Locale.ROOT)))
                .findFirst()
                .orElseThrow(
                    () ->
                        new TypeConversionException(
                            "'"
                                + text
                                + "' is none of "
                                + Arrays.stream(values)
                                    .map(word)
                                    .collect(Collectors.joining(", ")))));
  }

  /** A part in per cent, with the sign or without. */
  record Percent(double value) {}

  private static Double number(String text) {
    try {
      Optional<BigDecimal> number = Quantity.bare(text);
      return number.isPresent() ? number.get().doubleValue() : Double.valueOf(text);
    } catch (NumberFormatException e) {
      throw noNumber(text, "a number, such as 2 or 0.5");
    }
  }

  private static Percent percent(String text) {
    return Quantity.parse(text)
        .filter(quantity -> quantity.unit().isEmpty() || quantity.unit().equals("%"))
        .map(quantity -> new Percent(quantity.number().doubleValue()))
        .orElseThrow(() -> noNumber(text, "a part in per cent, such as 40 %"));
  }

  private static TypeConversionException noNumber(String text, String kind) {
    String point = Quantity.pointForComma(text).map(remedy -> ". " + remedy).orElse("");
    return new TypeConversionException("'" + text + "' is not " + kind + point);
  }

  private static LocalDate date(String text) {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeParseException e) {
      throw new TypeConversionException("'" + text + "' is not a date, such as 2026-01-31");
    }
  }

  private static PictureWidth width(String text) {
    try {
      return PictureWidth.parse(text);
    } catch (IllegalArgumentException e) {
      throw new TypeConversionException("'" + text + "' " + e.getMessage());
    }
  }

  private static <T> ITypeConverter<T> number(Function<String, T> parse, String kind) {
    return new Converter<>(
        text -> {
          try {
            return parse.apply(text);
          } catch (NumberFormatException e) {
            throw new TypeConversionException("'" + text + "' is not " + kind);
          }
        });
  }
}
