package org.fieldfold.typeset;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import org.fieldfold.manuscript.Section;

/** Remembers everything, and notes what was answered and what was new. */
final class LearntTrials implements Trials {
    private final Map<Section, String> names = new HashMap<>();
    private final Map<Trial, Long> answers = new HashMap<>();
    private final List<Trial> learnt = new ArrayList<>();
    private int answered;

    @Override
    public Optional<String> name(Section section) {
        return Optional.of(names.computeIfAbsent(section, unseen -> section.id() + " " + names.size()));
    }

    @Override
    public OptionalLong answer(Trial trial) {
        Long known = answers.get(trial);
        answered += known == null ? 0 : 1;
        return known == null ? OptionalLong.empty() : OptionalLong.of(known);
    }

    @Override
    public void learn(Trial trial, long answer) {
        answers.put(trial, answer);
        learnt.add(trial);
    }

    /** What was new since this was last asked. */
    List<Trial> learnt() {
        List<Trial> since = List.copyOf(learnt);
        learnt.clear();
        return since;
    }

    /** How many were answered since this was last asked. */
    int answered() {
        int since = answered;
        answered = 0;
        return since;
    }
}
