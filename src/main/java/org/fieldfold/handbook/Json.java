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
        for (int i = 0; i < text.length(); i++) {
            char sign = text.charAt(i);
            if (sign == '"' || sign == '\\') {
                out.append('\\').append(sign);
            } else if (sign < 0x20 || "<>&\u2028\u2029\u007F".indexOf(sign) >= 0 || sign > 0x7F && sign < 0xA0
                    || Character.isSurrogate(sign) || sign >= 0xFFFE) {
                out.append("\\u").append(Character.forDigit(sign >> 12, 16))
                        .append(Character.forDigit(sign >> 8 & 15, 16))
                        .append(Character.forDigit(sign >> 4 & 15, 16)).append(Character.forDigit(sign & 15, 16));
            } else {
                out.append(sign);
            }
        }
        out.append('"');
    }
}
