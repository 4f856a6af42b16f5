package stoneprocess.rules;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import stoneprocess.core.exposure.Lifting;
import stoneprocess.core.gloss.MineralShares;
import stoneprocess.core.internal.table.Tsv;
import stoneprocess.core.parameter.Parameter;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.HazardSheet;
import stoneprocess.core.source.Sources;
import stoneprocess.core.stone.RefractiveIndex;
import stoneprocess.core.stone.StoneCatalogue;
import stoneprocess.core.stone.Traits;
import stoneprocess.core.tool.GritSequence;
import stoneprocess.core.tool.Machine;
import stoneprocess.core.topic.Card;
import stoneprocess.core.topic.Protection;
import stoneprocess.rules.internal.engine.Chapters;
import stoneprocess.rules.internal.engine.LoadedRule;
import stoneprocess.rules.internal.engine.WrittenRules;

/**
 * What a rulebase says, as one text: two rulebases that answer differently differ here, and how a file is laid out or
 * remarked makes no difference. What is written in code, such as policies, is covered by the version.
 */
final class CanonicalForm {
    private static final Map<String, Class<?>> TABLES = Map.of(
            "compositions.tsv", MineralShares.class,
            "families.tsv", Traits.class,
            "grades.tsv", GritSequence.class,
            "hazards.tsv", HazardSheet.class,
            "lifting-frequency.tsv", Lifting.class,
            "machines.tsv", Machine.class,
            "minerals.tsv", RefractiveIndex.class,
            "purchase-limits.tsv", StoneCatalogue.class,
            "sources.tsv", Sources.class,
            "stones.tsv", StoneCatalogue.class);

    private final StringBuilder text = new StringBuilder();

    private CanonicalForm() {}

    /** Of rules that stand in the shipped chapters, with the shipped tables. */
    static CanonicalForm of(String version, List<LoadedRule> rules, Parameters parameters) {
        List<String> chapters = Chapters.names().stream().map(Chapters::text).toList();
        return of(
                version,
                rules.stream().map(LoadedRule::card).toList(),
                WrittenRules.of(chapters),
                parameters,
                shippedTables());
    }

    static CanonicalForm of(
            String version, List<Card> cards, WrittenRules written, Parameters parameters, Map<String, String> tables) {
        CanonicalForm form = new CanonicalForm();
        form.line("version", version);
        cards.forEach(card -> form.rule(card, written.body(card.id())));
        parameters.all().forEach(form::parameter);
        new TreeMap<>(tables).forEach(form::line);
        return form;
    }

    /** The content of each shipped table but the parameters, which a house may change. */
    static Map<String, String> shippedTables() {
        Map<String, String> contents = new TreeMap<>();
        TABLES.forEach((name, owner) -> contents.put(name, Tsv.content(owner, name)));
        return contents;
    }

    private void rule(Card card, String body) {
        line("rule", card.id());
        line("title", card.title());
        line("because", card.because());
        line("source", card.source().id());
        line("since", card.since());
        line("locked", String.valueOf(card.locked()));
        line("offers", String.join(" ", card.offers()));
        line("protects", card.protects().map(Protection::key).orElse(""));
        line("differs", card.differs().orElse(""));
        line("chapter", card.chapter());
        line("topic", card.topic().id());
        line("body", body);
    }

    private void parameter(Parameter parameter) {
        line("parameter", parameter.name());
        line("value", parameter.value().print());
        line("source", parameter.source().id());
        line("house", parameter.house().key());
    }

    private void line(String name, String value) {
        text.append(name).append('=').append(value).append('\n');
    }

    /** SHA-256 of the text, in hexadecimal. */
    String hash() {
        try {
            byte[] digest =
                    MessageDigest.getInstance("SHA-256").digest(text.toString().getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java platform has SHA-256", e);
        }
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
