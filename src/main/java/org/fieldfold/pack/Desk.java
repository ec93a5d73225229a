package org.fieldfold.pack;

import java.util.List;

/**
 * The office as it answers a question that no sheet answers: a helper reads it out over the counter.
 *
 * @param hours when somebody is there
 * @param people who is there, and what for
 */
public record Desk(String name, String phone, String hours, List<String> people, String email,
        List<String> address) {
    public Desk {
        people = List.copyOf(people);
        address = List.copyOf(address);
    }
}
