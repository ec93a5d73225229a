package org.fieldfold.content;

import java.util.regex.Pattern;

/**
 * Which addresses a text may lead to. The host is written out in plain letters: percent signs, backslashes or
 * a name before an '@' would show a reader another host than the one that is opened.
 */
final class LinkForm {
    private static final Pattern PAGE = Pattern.compile(
            "https?://[a-z0-9](?:[a-z0-9.-]*+)(?::[0-9]{1,5})?(?:[/?#][^\\s\\\\]*+)?", Pattern.CASE_INSENSITIVE);
    private static final Pattern MAIL = Pattern.compile(
            "mailto:[a-z0-9._+-]++@[a-z0-9.-]++(?:\\?[^\\s\\\\]*+)?", Pattern.CASE_INSENSITIVE);
    private static final Pattern CALL = Pattern.compile("tel:\\+?[0-9][0-9().-]*+",
            Pattern.CASE_INSENSITIVE);

    private LinkForm() {
    }

    /** A web page. */
    static boolean isPage(String address) {
        return PAGE.matcher(address).matches() && UnseenCharacters.next(address, 0).isEmpty();
    }

    /** A web page, a mail address or a telephone. */
    static boolean isKnown(String address) {
        return isPage(address) || MAIL.matcher(address).matches() && UnseenCharacters.next(address, 0).isEmpty()
                || CALL.matcher(address).matches();
    }
}
