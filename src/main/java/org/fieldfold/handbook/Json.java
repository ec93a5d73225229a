package org.fieldfold.handbook;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Maps, lists, texts, numbers and truth values as JSON that may stand inside a script of a page: nothing in it can
 * end the script or open a comment (HTML, 4.12.1.3), and no line separator can end a line.
 */
final class Json {
    private Json() {
    }

    /** What is JSON already. */
    record Written(String json) {
        static Written of(Object value) {
            return new Written(Json.of(value));
        }
    }

    static String of(Object value) {
        StringBuilder out = new StringBuilder();
        write(out, value);
        return out.toString();
    }

    private static void write(StringBuilder out, Object value) {
        if (value instanceof Map<?, ?> map) {
            String before = "{";
            for (Map.Entry<?, ?> entry : map.entrySet()) {
                text(out.append(before), String.valueOf(entry.getKey()));
                write(out.append(':'), entry.getValue());
                before = ",";
            }
            out.append(map.isEmpty() ? "{}" : "}");
        } else if (value instanceof List<?> list) {
            String before = "[";
            for (Object one : list) {
                write(out.append(before), one);
                before = ",";
            }
            out.append(list.isEmpty() ? "[]" : "]");
        } else if (value instanceof Optional<?> perhaps) {
            perhaps.ifPresentOrElse(one -> write(out, one), () -> out.append("null"));
        } else if (value instanceof Written written) {
            out.append(written.json());
        } else if (value instanceof Number || value instanceof Boolean) {
            out.append(value);
        } else {
            text(out, String.valueOf(value));
        }
    }

    private static void text(StringBuilder out, String text) {
        out.append('"');
        int from = 0;
        for (int i = 0; i < text.length(); i++) {
            char sign = text.charAt(i);
            if (isPlain(sign)) {
                continue;
            }
            out.append(text, from, i);
            from = i + 1;
            if (sign == '"' || sign == '\\') {
                out.append('\\').append(sign);
            } else {
                out.append("\\u").append(Character.forDigit(sign >> 12, 16))
                        .append(Character.forDigit(sign >> 8 & 15, 16))
                        .append(Character.forDigit(sign >> 4 & 15, 16)).append(Character.forDigit(sign & 15, 16));
            }
        }
        out.append(text, from, text.length()).append('"');
    }

    private static boolean isPlain(char sign) {
        return sign < 0x7F ? sign >= 0x20 && sign != '"' && sign != '\\' && sign != '<' && sign != '>' && sign != '&'
                : sign >= 0xA0 && sign != '\u2028' && sign != '\u2029' && !Character.isSurrogate(sign) && sign < 0xFFFE;
    }
}
