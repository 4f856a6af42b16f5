package stoneprocess.rules.internal.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stoneprocess.core.log.Entry;
import stoneprocess.core.log.Moment;
import stoneprocess.core.tool.AbrasiveGrade;

/**
 * The work of one track in the order of its moments. Entries of one grit in a row are one stage.
 *
 * @param stages the grits in the order worked; a grit that was gone back to stands again
 */
record TrackWork(List<Stage> stages) {
    /**
     * One grit worked at a stretch.
     *
     * @param grade the grit
     * @param entries the work, at least one entry
     */
    record Stage(AbrasiveGrade grade, List<Entry.Worked> entries) {
        int passes() {
            return entries.stream().mapToInt(Entry.Worked::passes).sum();
        }

        /** Passes done by a moment, those noted at the moment included. */
        int passesBy(Moment moment) {
            return entries.stream()
                    .filter(entry -> entry.at().compareTo(moment) <= 0)
                    .mapToInt(Entry.Worked::passes)
                    .sum();
        }

        Moment first() {
            return entries.get(0).at();
        }

        Moment last() {
            return entries.get(entries.size() - 1).at();
        }
    }

    static TrackWork of(List<Entry.Worked> inOrder) {
        List<Stage> stages = new ArrayList<>();
        List<Entry.Worked> stretch = new ArrayList<>();
        for (Entry.Worked entry : inOrder) {
            if (!stretch.isEmpty() && !stretch.get(0).grade().equals(entry.grade())) {
                stages.add(new Stage(stretch.get(0).grade(), List.copyOf(stretch)));
                stretch.clear();
            }
            stretch.add(entry);
        }
        if (!stretch.isEmpty()) {
            stages.add(new Stage(stretch.get(0).grade(), List.copyOf(stretch)));
        }
        return new TrackWork(List.copyOf(stages));
    }

    Optional<Stage> latest() {
        return stages.isEmpty() ? Optional.empty() : Optional.of(stages.get(stages.size() - 1));
    }

    /** All work done with a grit. */
    List<Entry.Worked> entries(AbrasiveGrade grade) {
        return stages.stream()
                .filter(stage -> stage.grade().equals(grade))
                .flatMap(stage -> stage.entries().stream())
                .toList();
    }

    /** How often the work went to a coarser grit than the one before. */
    int returns() {
        int returns = 0;
        for (int i = 1; i < stages.size(); i++) {
            if (AbrasiveGrade.IN_ORDER.compare(
                            stages.get(i).grade(), stages.get(i - 1).grade())
                    < 0) {
                returns++;
            }
        }
        return returns;
    }

    /** The stage that a moment lies in or after; -1 before the first. */
    int stageAt(Moment moment) {
        int stage = -1;
        for (int i = 0; i < stages.size(); i++) {
            if (stages.get(i).first().compareTo(moment) <= 0) {
                stage = i;
            }
        }
        return stage;
    }
}
