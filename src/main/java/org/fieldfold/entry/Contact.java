package org.fieldfold.entry;

import java.util.List;

/** How an office is reached. */
public record Contact(
        @Describe("telephone number") String phone,
        @Describe("electronic mail address") String email,
        @Describe("postal address, a line each") List<String> address,
        @Describe("when somebody is there") @Translated String hours,
        @Describe("who is there") @Translated List<String> people) {
}
