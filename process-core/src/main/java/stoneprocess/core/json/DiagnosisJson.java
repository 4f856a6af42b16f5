package stoneprocess.core.json;

import java.util.List;
import stoneprocess.core.follow.Diagnosis;
import stoneprocess.core.log.Sign;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.problem.MissingLibraryException;
import stoneprocess.core.term.Term;

/** Diagnoses as JSON: the signs, and the remedy in the form of a next move. Lossless and versioned. */
public final class DiagnosisJson {
    private static final String WHAT = "diagnosis";

    private DiagnosisJson() {}

    /**
     * Prints a diagnosis.
     *
     * @throws InvalidInputException as {@link NextMoveJson#print} of its remedy
     * @throws MissingLibraryException when Jackson is not on the class path
     */
    public static String print(Diagnosis diagnosis) {
        return Jackson.with(() -> Tree.print(new Fields()
                .put("format", Diagnosis.FORMAT)
                .put("signs", Term.keys(diagnosis.signs()))
                .put("remedy", NextMoveJson.tree(diagnosis.remedy()))
                .tree()));
    }

    /**
     * Reads a diagnosis back; it equals the one that was printed.
     *
     * @throws InvalidInputException with one line that names the field, the value and what would be accepted
     * @throws MissingLibraryException when Jackson is not on the class path
     */
    public static Diagnosis read(String json) {
        return Jackson.with(() -> read(new Node("", Tree.parse(json, WHAT))));
    }

    private static Diagnosis read(Node root) {
        root.form(WHAT, Diagnosis.FORMAT).only(List.of("format", "signs", "remedy"));
        return new Diagnosis(root.get("signs").terms(Sign.class), NextMoveJson.read(root.get("remedy")));
    }
}
