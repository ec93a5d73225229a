package org.fieldfold.content;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Optional;
import java.util.regex.Pattern;
import org.fieldfold.source.Finding;

/** Single values other than texts: numbers, dates, words. Each gives the value or says why not. */
final class ScalarReading {
    private static final Pattern WHOLE = Pattern.compile("[-+]?[0-9]{1,9}");
    private static final Pattern NUMBER =
            Pattern.compile("[-+]?(?:[0-9]{1,15}(?:\\.[0-9]{0,15})?|\\.[0-9]{1,15})");
    private static final Pattern DATE = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}");
    private static final Pattern MONTH_DAY = Pattern.compile("[0-9]{2}-[0-9]{2}");
    private static final Pattern ID = Pattern.compile("[a-z0-9]+(?:-[a-z0-9]+)*");
    private static final int LONGEST_ID = 64;

    private ScalarReading() {
    }

    /** A value, or the finding that stands in its place. */
    record Reading(Optional<Object> value, Optional<Finding> finding) {
        static Reading of(Object value) {
            return new Reading(Optional.of(value), Optional.empty());
        }

        static Reading not(Finding finding) {
            return new Reading(Optional.empty(), Optional.of(finding));
        }
    }

    static boolean isId(String word) {
        return word.length() <= LONGEST_ID && ID.matcher(word).matches();
    }

    static Reading read(Shape.Plain shape, YamlNode.Scalar scalar, Shape.Range range) {
        return switch (shape) {
            case INTEGER -> number(scalar, range, true);
            case NUMBER -> number(scalar, range, false);
            case TRUTH -> truth(scalar);
            case DATE -> date(scalar);
            case MONTH_DAY -> monthDay(scalar);
            case STRING, TEXT, PROSE -> Reading.of(scalar.value());
        };
    }

    static Reading word(Shape.Words words, YamlNode.Scalar scalar) {
        Object known = words.byWord().get(scalar.value());
        if (known != null) {
            return Reading.of(known);
        }
        return Reading.not(FormRule.UNKNOWN_WORD.at(scalar.span(), "expected " + words.expected() + ", found "
                + shown(scalar), Nearest.hint(scalar.value(), words.byWord().keySet(),
                        "take one of these words")));
    }

    private static Reading number(YamlNode.Scalar scalar, Shape.Range range, boolean whole) {
        String expected = whole ? Shape.Plain.INTEGER.expected() : Shape.Plain.NUMBER.expected();
        String value = scalar.value();
        if (scalar.style() != YamlNode.Style.PLAIN || !(whole ? WHOLE : NUMBER).matcher(value).matches()) {
            return Reading.not(FormRule.BAD_NUMBER.at(scalar.span(), "expected " + expected + ", found "
                    + shown(scalar),
                    numberHint(scalar, whole)));
        }
        double number = Double.parseDouble(value);
        if (!range.holds(number)) {
            return Reading.not(FormRule.OUT_OF_RANGE.at(scalar.span(), "expected " + expected + " from "
                    + plain(range.from()) + " to " + plain(range.to()) + ", found " + value,
                            "check the digits and the unit"));
        }
        return Reading.of(whole ? (Object) (int) number : (Object) number);
    }

    private static String numberHint(YamlNode.Scalar scalar, boolean whole) {
        String value = scalar.value().strip();
        if (scalar.style() != YamlNode.Style.PLAIN && (whole ? WHOLE : NUMBER).matcher(value).matches()) {
            return "take the quotation marks away";
        }
        if (value.matches("[0-9]+,[0-9]+")) {
            return "write a decimal point: " + value.replace(',', '.');
        }
        if (value.matches("[0-9]+(\\.[0-9]+)?( .*| *[^0-9.,eE\\s-].*)")) {
            return "write the number alone; its unit is fixed by the key";
        }
        return "write it in digits";
    }

    /** A limit as people write it. */
    static String plain(double limit) {
        return limit == Math.rint(limit) ? Long.toString((long) limit) : Double.toString(limit);
    }

    private static Reading truth(YamlNode.Scalar scalar) {
        if (scalar.style() == YamlNode.Style.PLAIN) {
            switch (scalar.value()) {
                case "true", "True", "TRUE":
                    return Reading.of(true);
                case "false", "False", "FALSE":
                    return Reading.of(false);
                default:
                    break;
            }
        }
        return Reading.not(FormRule.WRONG_TYPE.at(scalar.span(), "expected true or false, found "
                + shown(scalar),
                "write true or false, without quotation marks"));
    }

    private static Reading date(YamlNode.Scalar scalar) {
        String value = scalar.value();
        String hint = "write year-month-day, as in 2026-11-30";
        if (DATE.matcher(value).matches()) {
            try {
                return Reading.of(LocalDate.of(Integer.parseInt(value.substring(0, 4)),
                        Integer.parseInt(value.substring(5, 7)), Integer.parseInt(value.substring(8))));
            } catch (DateTimeException e) {
                hint = "there is no such day; check month and day";
            }
        }
        return Reading.not(FormRule.BAD_DATE.at(scalar.span(), "expected " + Shape.Plain.DATE.expected()
                + ", found " + shown(scalar), hint));
    }

    private static Reading monthDay(YamlNode.Scalar scalar) {
        String value = scalar.value();
        String hint = "write month-day, as in 05-01";
        if (MONTH_DAY.matcher(value).matches()) {
            try {
                return Reading.of(MonthDay.of(Integer.parseInt(value.substring(0, 2)),
                        Integer.parseInt(value.substring(3))));
            } catch (DateTimeException e) {
                hint = "there is no such day; check month and day";
            }
        }
        return Reading.not(FormRule.BAD_DATE.at(scalar.span(), "expected " + Shape.Plain.MONTH_DAY.expected()
                + ", found " + shown(scalar), hint));
    }

    /** What was found, as a message says it, cut where it is long. */
    static String shown(YamlNode node) {
        if (node instanceof YamlNode.Items) {
            return "a list";
        }
        if (node instanceof YamlNode.Pairs) {
            return "a map";
        }
        if (node instanceof YamlNode.Scalar scalar && !scalar.isNothing()) {
            return "'" + cut(scalar.value()) + "'";
        }
        return "nothing";
    }

    static String cut(String value) {
        String line = value.strip().replaceAll("\\s+", " ");
        return line.codePointCount(0, line.length()) <= 40 ? line
                : line.substring(0, line.offsetByCodePoints(0, 37)) + "…";
    }
}
