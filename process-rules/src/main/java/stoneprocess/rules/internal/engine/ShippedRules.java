package stoneprocess.rules.internal.engine;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drools.base.util.Drools;
import org.drools.model.Model;
import org.drools.model.Rule;
import stoneprocess.core.problem.RulebaseException;
import stoneprocess.core.source.Sources;
import stoneprocess.core.topic.Card;
import stoneprocess.core.topic.Protection;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;

/**
 * The rules that were compiled into this jar when the library was built. Nothing is parsed, scanned or compiled at run
 * time.
 */
public final class ShippedRules {
    private static final String INDEX = "/META-INF/kie/stoneprocess/process-rules/drools-model";
    private static final String VERSION_HEADER = "Drools-Model-Version:";

    private ShippedRules() {}

    /** All shipped rules, ordered by id. */
    public static List<LoadedRule> load() {
        List<LoadedRule> rules = new ArrayList<>();
        for (String name : modelNames()) {
            for (Rule rule : model(name).getRules()) {
                rules.add(loaded(rule));
            }
        }
        rules.sort(Comparator.comparing(LoadedRule::id));
        Set<String> ids = new HashSet<>();
        for (LoadedRule rule : rules) {
            if (!ids.add(rule.id())) {
                throw new RulebaseException("Two rules have the id " + rule.id());
            }
        }
        return List.copyOf(rules);
    }

    /**
     * The shipped rules with the given cards, ordered by id.
     *
     * @throws RulebaseException when a card is not that of a shipped rule
     */
    public static List<LoadedRule> of(Collection<Card> cards) {
        Set<String> ids = cards.stream().map(Card::id).collect(Collectors.toSet());
        List<LoadedRule> rules =
                load().stream().filter(rule -> ids.contains(rule.id())).toList();
        if (rules.size() != ids.size()) {
            throw new RulebaseException("The rulebase has rules that are not shipped ones; only those can be checked");
        }
        return rules;
    }

    private static List<String> modelNames() {
        try (InputStream in = ShippedRules.class.getResourceAsStream(INDEX)) {
            if (in == null) {
                throw new RulebaseException("The compiled rules are missing from the class path: no " + INDEX);
            }
            List<String> lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))
                    .lines()
                    .filter(line -> !line.isBlank())
                    .toList();
            requireVersion(lines.get(0));
            return lines.subList(1, lines.size());
        } catch (IOException e) {
            throw new RulebaseException("The index of the compiled rules cannot be read", e);
        }
    }

    private static void requireVersion(String header) {
        String compiled = header.startsWith(VERSION_HEADER) ? header.substring(VERSION_HEADER.length()) : header;
        requireVersion(compiled, Drools.getFullVersion());
    }

    static void requireVersion(String compiled, String running) {
        if (!compiled.equals(running)) {
            throw new RulebaseException(
                    "The rules were compiled for Drools " + compiled + ", and the class path has Drools " + running
                            + ". Maybe another dependency brings its own engine.");
        }
    }

    private static Model model(String className) {
        try {
            return (Model) Class.forName(className, true, ShippedRules.class.getClassLoader())
                    .getDeclaredConstructor()
                    .newInstance();
        } catch (ReflectiveOperationException e) {
            throw new RulebaseException("The compiled rules " + className + " cannot be loaded", e);
        }
    }

    private static LoadedRule loaded(Rule rule) {
        Card card = card(rule);
        return new LoadedRule(card, FactPattern.of(card.id(), rule.getView().getSubConditions()), rule);
    }

    /** The card of a compiled rule. */
    static Card card(Rule rule) {
        Map<String, Object> meta = rule.getMetaData();
        String group = rule.getAttribute(Rule.Attribute.AGENDA_GROUP);
        Topic<?> topic = Topics.named(text(rule, meta, "topic"));
        if (!topic.stage().key().equals(group)) {
            throw new RulebaseException("Rule '" + rule.getName() + "' stands in chapter " + group
                    + " and speaks to topic " + topic + " of another stage");
        }
        return new Card(
                text(rule, meta, "id"),
                rule.getName(),
                text(rule, meta, "because"),
                Sources.standard().get(text(rule, meta, "source")),
                text(rule, meta, "since"),
                "safety".equals(meta.get("lock")),
                meta.containsKey("offers")
                        ? Arrays.asList(text(rule, meta, "offers").split(" "))
                        : List.of(),
                meta.containsKey("protects")
                        ? Optional.of(protection(rule, text(rule, meta, "protects")))
                        : Optional.empty(),
                meta.containsKey("differs") ? Optional.of(text(rule, meta, "differs")) : Optional.empty(),
                group,
                topic);
    }

    private static Protection protection(Rule rule, String key) {
        return Stream.of(Protection.values())
                .filter(protection -> protection.key().equals(key))
                .findFirst()
                .orElseThrow(() -> new RulebaseException("Rule '" + rule.getName() + "' has @protects(\"" + key
                        + "\"), which is none of " + List.of(Protection.values())));
    }

    private static String text(Rule rule, Map<String, Object> meta, String key) {
        Object value = meta.get(key);
        if (value instanceof String text) {
            return text;
        }
        throw new RulebaseException("Rule '" + rule.getName() + "' has no @" + key);
    }
}
