package stoneprocess.core.json;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The JSON schemas (2020-12) of what is read and printed. Needs no Jackson. */
public final class Schemas {
    private Schemas() {}

    /** The schema of a survey. */
    public static String survey() {
        return read("floor-survey.schema.json");
    }

    /** The schema of a recommendation. */
    public static String recommendation() {
        return read("floor-recommendation.schema.json");
    }

    /** The schema of a job log. */
    public static String jobLog() {
        return read("job-log.schema.json");
    }

    /** The schema of a next move. */
    public static String nextMove() {
        return read("next-move.schema.json");
    }

    /** The schema of a diagnosis. */
    public static String diagnosis() {
        return read("diagnosis.schema.json");
    }

    /** The schema of an answer why. */
    public static String why() {
        return read("why.schema.json");
    }

    /** The schema of an answer why not. */
    public static String whyNot() {
        return read("why-not.schema.json");
    }

    /** The schema of the difference of two recommendations. */
    public static String difference() {
        return read("difference.schema.json");
    }

    /** The schema of the answer to how a floor would get a value. */
    public static String howTo() {
        return read("how-to.schema.json");
    }

    /** The schema of the answer to what else is worth finding out. */
    public static String whatElse() {
        return read("what-else.schema.json");
    }

    /** The schema of a comparison of two rulebases. */
    public static String comparison() {
        return read("comparison.schema.json");
    }

    /** The schema of what an audit of a rulebase found. */
    public static String audit() {
        return read("audit.schema.json");
    }

    private static String read(String name) {
        try (InputStream in = Schemas.class.getResourceAsStream("schema/" + name)) {
            if (in == null) {
                throw new IllegalStateException("The schema " + name + " is missing from the class path");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("The schema " + name + " cannot be read", e);
        }
    }
}
