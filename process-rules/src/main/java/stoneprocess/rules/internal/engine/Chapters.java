package stoneprocess.rules.internal.engine;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import stoneprocess.core.problem.RulebaseException;

/** The text of the rules as a trainer reads it; the rulebase's hash is made from it, the engine never reads it. */
public final class Chapters {
    private static final List<String> NAMES = List.of(
            "10-survey.drl",
            "20-go-no-go.drl",
            "30-first-cut.drl",
            "40-sequence.drl",
            "50-equipment.drl",
            "60-water-and-passes.drl",
            "70-finishing.drl",
            "80-safety.drl",
            "90-follow-review.drl",
            "91-diagnose-signs.drl",
            "92-follow-next.drl",
            "93-diagnose-next.drl",
            "94-remedies.drl");

    private Chapters() {}

    public static List<String> names() {
        return NAMES;
    }

    /** The text of a chapter with line feeds. */
    public static String text(String name) {
        String path = "/stoneprocess/rules/chapter/" + name;
        try (InputStream in = Chapters.class.getResourceAsStream(path)) {
            if (in == null) {
                throw new RulebaseException("The chapter " + path + " is missing from the class path");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).replace("\r\n", "\n");
        } catch (IOException e) {
            throw new RulebaseException("The chapter " + path + " cannot be read", e);
        }
    }
}
