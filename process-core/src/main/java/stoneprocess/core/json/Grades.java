package stoneprocess.core.json;

import java.util.Optional;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.GritSequence;

/**
 * The grades that may be printed as a key: where the sequence is printed along, those of the sequence, since another one
 * could not be read back.
 *
 * @param sequence the sequence; empty where it is not printed along
 * @param path the field that holds it
 */
record Grades(Optional<GritSequence> sequence, String path) {
    static final Grades ANY = new Grades(Optional.empty(), "");

    String key(AbrasiveGrade grade) {
        if (sequence.isPresent() && !sequence.get().grades().contains(grade)) {
            throw new InvalidInputException(
                    path,
                    "without " + grade.key() + " as planned, worked or on hand",
                    "a sequence with every grade that is named, of the same grain");
        }
        return grade.key();
    }
}
