package stoneprocess.core.json;

import java.math.BigInteger;
import java.util.List;
import stoneprocess.core.audit.AuditReport;
import stoneprocess.core.audit.Finding;
import stoneprocess.core.audit.FindingKind;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.problem.MissingLibraryException;
import stoneprocess.core.tool.GritSequence;

/** What an audit found, as JSON: lossless, versioned, the same bytes on every machine. */
public final class AuditJson {
    private static final String WHAT = "audit";

    private AuditJson() {}

    /**
     * Prints a report.
     *
     * @throws MissingLibraryException when Jackson is not on the class path
     */
    public static String print(AuditReport report) {
        return Jackson.with(() -> Tree.print(new Fields()
                .put("format", AuditReport.FORMAT)
                .put("rulebase", RecommendationJson.tree(report.rulebase()))
                .put("topics", Fields.list(report.topics(), AuditJson::tree))
                .put("across-stages", report.acrossStages().toString())
                .put("findings", Fields.list(report.findings(), AuditJson::tree))
                .tree()));
    }

    /**
     * Reads a report back; it equals the one that was printed.
     *
     * @throws InvalidInputException with one line that names the field, the value and what would be accepted
     * @throws MissingLibraryException when Jackson is not on the class path
     */
    public static AuditReport read(String json) {
        return Jackson.with(() -> read(new Node("", Tree.parse(json, WHAT))));
    }

    private static AuditReport read(Node root) {
        root.form(WHAT, AuditReport.FORMAT).only(List.of("format", "rulebase", "topics", "across-stages", "findings"));
        return new AuditReport(
                RecommendationJson.stamp(root.get("rulebase")),
                root.get("topics").list(AuditJson::space),
                count(root.get("across-stages")),
                root.get("findings").list(AuditJson::finding));
    }

    private static Object tree(AuditReport.Space space) {
        return new Fields()
                .put("topic", space.topic())
                .put("rules", space.rules())
                .put("facts", space.facts())
                .put("combinations", space.combinations().toString())
                .put("covered", space.covered().toString())
                .put("states", space.states())
                .tree();
    }

    private static AuditReport.Space space(Node node) {
        node.only(List.of("topic", "rules", "facts", "combinations", "covered", "states"));
        return new AuditReport.Space(
                node.get("topic").text(),
                node.get("rules").integer(0),
                node.get("facts").integer(0),
                count(node.get("combinations")),
                count(node.get("covered")),
                node.get("states").integer(0));
    }

    /** A count may be larger than the numbers that readers of JSON keep exactly, so that it is a text of digits. */
    private static BigInteger count(Node node) {
        String digits = node.text();
        if (!digits.matches("[0-9]{1,200}")) {
            throw new InvalidInputException(node.path(), digits, "a whole number in digits");
        }
        return new BigInteger(digits);
    }

    private static Object tree(Finding finding) {
        return new Fields()
                .put("kind", finding.kind().key())
                .put("topic", finding.topic())
                .put("rules", finding.rules())
                .put("values", finding.values())
                .put("facts", Fields.list(finding.facts(), RecommendationJson::tree))
                .put("details", finding.details())
                .putIf("survey", finding.survey().map(SurveyJson::tree))
                .putIf("explained", finding.explained())
                .tree();
    }

    private static Finding finding(Node node) {
        node.only(List.of("kind", "topic", "rules", "values", "facts", "details", "survey", "explained"));
        return new Finding(
                node.get("kind").term(FindingKind.class),
                node.get("topic").text(),
                node.get("rules").texts(),
                node.get("values").texts(),
                node.get("facts").list(RecommendationJson::fact),
                node.get("details").texts(),
                node.optional("survey").map(survey -> SurveyJson.read(survey, GritSequence.standard())),
                node.optional("explained").map(Node::text));
    }
}
