package org.fieldfold.handbook;

import java.net.URI;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * Decides which addresses outside the handbook may be links: pages, mail and telephone, nothing that could
 * run.
 */
final class Links {
    private Links() {
    }

    /** The address as it may stand in a page, or empty when it must stay text. */
    static Optional<String> outside(String address) {
        String encoded = encoded(address);
        try {
            URI uri = new URI(encoded);
            String scheme = uri.getScheme() == null ? "" : uri.getScheme();
            boolean page = (scheme.equals("https") || scheme.equals("http")) && uri.getHost() != null;
            boolean message = scheme.equals("mailto") && uri.getSchemeSpecificPart().contains("@");
            boolean call = scheme.equals("tel") && uri.getSchemeSpecificPart().matches("\\+?[0-9][0-9().-]*");
            return page || message || call ? Optional.of(encoded) : Optional.empty();
        } catch (URISyntaxException broken) {
            return Optional.empty();
        }
    }

    private static String encoded(String address) {
        StringBuilder out = new StringBuilder();
        for (byte unit : address.getBytes(StandardCharsets.UTF_8)) {
            if (unit > 0x20 && unit < 0x7F && "\"<>\\^`{|}".indexOf(unit) < 0) {
                out.append((char) unit);
            } else {
                out.append('%').append(Character.toUpperCase(Character.forDigit(unit >> 4 & 15, 16)))
                        .append(Character.toUpperCase(Character.forDigit(unit & 15, 16)));
            }
        }
        return out.toString();
    }
}
