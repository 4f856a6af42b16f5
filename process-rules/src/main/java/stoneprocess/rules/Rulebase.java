package stoneprocess.rules;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Properties;
import org.jspecify.annotations.Nullable;
import stoneprocess.core.answer.RuleContent;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.RulebaseStamp;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.problem.RulebaseException;
import stoneprocess.core.topic.Card;
import stoneprocess.rules.internal.classify.Facts;
import stoneprocess.rules.internal.engine.Engine;
import stoneprocess.rules.internal.engine.LoadedRule;
import stoneprocess.rules.internal.engine.ShippedRules;
import stoneprocess.rules.internal.meaning.RuleMeaning;
import stoneprocess.rules.internal.meaning.RuleMeanings;
import stoneprocess.rules.overlay.Overlay;

/**
 * A set of rules and numbers, built once and used by any number of advisors and threads. Several rulebases live side by
 * side.
 */
public final class Rulebase {
    private static volatile @Nullable Rulebase standard;

    private final List<LoadedRule> rules;
    private final Parameters parameters;
    private final RulebaseStamp stamp;
    private final Engine engine;
    private final RuleMeanings meanings;
    private volatile @Nullable List<RuleContent> contents;

    private Rulebase(List<LoadedRule> rules, Parameters parameters, Overlay overlay) {
        List<String> switchedOff = overlay.switchedOff().stream()
                .map(Overlay.SwitchedOff::rule)
                .distinct()
                .sorted()
                .toList();
        this.rules = rules;
        this.parameters = parameters;
        this.stamp = new RulebaseStamp(
                version(), CanonicalForm.of(version(), rules, parameters).hash(), switchedOff, overlay.houseRules());
        this.engine = new Engine(rules);
        this.meanings = RuleMeanings.of(rules);
    }

    /** The shipped rules and numbers: the same rulebase at every call, built at the first. */
    public static Rulebase standard() {
        Rulebase rulebase = standard;
        if (rulebase == null) {
            // Two threads may both make one; they are alike.
            rulebase = with(Overlay.none());
            standard = rulebase;
        }
        return rulebase;
    }

    /**
     * The shipped rules and numbers as a house changes them.
     *
     * @throws InvalidInputException for an unknown rule or parameter, for a safety rule that is to be switched off, for a
     *     number behind a safety rule that is loosened, and for scales and ranges that no longer rise
     */
    public static Rulebase with(Overlay overlay) {
        List<LoadedRule> shipped = ShippedRules.load();
        for (Overlay.SwitchedOff change : overlay.switchedOff()) {
            requireUnlocked(change.rule(), shipped);
        }
        Parameters parameters = Parameters.standard();
        for (Overlay.Retuned change : overlay.retuned()) {
            parameters = parameters.with(change.parameter(), change.value());
        }
        Facts.requireScales(parameters.requireRanges());
        List<LoadedRule> kept = shipped.stream()
                .filter(rule -> overlay.switchedOff(rule.id()).isEmpty())
                .toList();
        return new Rulebase(kept, parameters, overlay);
    }

    private static void requireUnlocked(String id, List<LoadedRule> shipped) {
        Card card = shipped.stream()
                .map(LoadedRule::card)
                .filter(candidate -> candidate.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new InvalidInputException("overlay.rule", id, "the id of a shipped rule"));
        if (card.locked()) {
            throw new InvalidInputException(
                    "overlay.rule", id, "a rule that is not locked; '" + card.title() + "' is a safety rule");
        }
    }

    /** The cards of all rules, ordered by id. */
    public List<Card> cards() {
        return meanings.all().stream().map(RuleMeaning::card).toList();
    }

    /**
     * What every rule says, ordered by id: its conditions and what it asks for, beside its card. It is read when
     * first asked for.
     */
    public List<RuleContent> contents() {
        List<RuleContent> read = contents;
        if (read == null) {
            // Two threads may both read them; they are alike.
            read = meanings.all().stream().map(RuleMeaning::content).toList();
            contents = read;
        }
        return read;
    }

    public Parameters parameters() {
        return parameters;
    }

    /** Version and hash, as they stand in every recommendation. */
    public RulebaseStamp stamp() {
        return stamp;
    }

    List<LoadedRule> rules() {
        return rules;
    }

    Engine engine() {
        return engine;
    }

    /** What each rule reads and says. */
    RuleMeanings meanings() {
        return meanings;
    }

    /** The version of the library, as it stands in every stamp. */
    public static String version() {
        Properties properties = new Properties();
        try (InputStream in = Rulebase.class.getResourceAsStream("version.properties")) {
            if (in == null) {
                throw new RulebaseException("version.properties is missing from the class path");
            }
            properties.load(in);
        } catch (IOException e) {
            throw new RulebaseException("version.properties cannot be read", e);
        }
        return properties.getProperty("version");
    }
}
