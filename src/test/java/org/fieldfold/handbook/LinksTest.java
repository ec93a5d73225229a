package org.fieldfold.handbook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LinksTest {
    @ParameterizedTest
    @ValueSource(strings = {
        "javascript:alert(1)", "JAVASCRIPT:alert(1)", " javascript:alert(1)", "java\nscript:x",
        "data:text/html,x", "file:///etc/x", "//host.example/x", "page.html", "https:///x", "https://[",
        "tel:abc", "mailto:nobody", ""})
    void whatMayNotBeALinkStaysText(String address) {
        assertEquals(Optional.empty(), Links.outside(address));
    }

    @Test
    void pagesMailAndTelephoneAreLinks() {
        assertEquals(Optional.of("https://handbook.example/2027?q=a%20b"),
                Links.outside("https://handbook.example/2027?q=a b"));
        assertEquals(Optional.of("tel:555-0144"), Links.outside("tel:555-0144"));
        assertEquals(Optional.of("mailto:office@valley.example"),
                Links.outside("mailto:office@valley.example"));
    }
}
