package stoneprocess.rules.audit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.OfferKind;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.source.Sources;
import stoneprocess.core.topic.Card;
import stoneprocess.core.topic.ContributionKind;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;

/** What is no longer so on a card. Each is told as the part of the card, a colon and what stands there. */
final class CardAudit {
    private static final Pattern RULE = Pattern.compile("\\b[A-Z]{3}-\\d{3}\\b");
    private static final Pattern NUMBER = Pattern.compile("\\{(?:value|range):([^}]*)}");

    private final Set<String> ids;
    private final Parameters parameters;
    private final String version;

    CardAudit(Set<String> ids, Parameters parameters, String version) {
        this.ids = ids;
        this.parameters = parameters;
        this.version = version;
    }

    List<String> stale(Card card, List<FiringWay> ways) {
        List<String> stale = new ArrayList<>();
        if (!Sources.standard().all().contains(card.source())) {
            stale.add("source: " + card.source().id());
        }
        if (isLater(card.since())) {
            stale.add("since: " + card.since());
        }
        if (!card.topic().stage().key().equals(card.chapter())) {
            stale.add("chapter: " + card.chapter());
        }
        if (same(card.because(), card.title())) {
            stale.add("because: " + card.because());
        }
        card.differs()
                .filter(text -> same(text, card.because()) || same(text, card.title()))
                .ifPresent(text -> stale.add("differs: " + text));
        offers(card, card.topic(), ways, stale);
        String text = card.title() + " " + card.because() + " " + card.differs().orElse("");
        named(text, stale);
        return stale;
    }

    /**
     * Only a demand or an exclusion on a topic without which there is no plan, a verdict, or what the owner is asked to
     * accept is ever bargained over.
     */
    private static void offers(Card card, Topic<?> topic, List<FiringWay> ways, List<String> stale) {
        Set<String> kinds = Arrays.stream(OfferKind.values()).map(Enum::name).collect(Collectors.toSet());
        card.offers().stream().filter(offer -> !kinds.contains(offer)).forEach(offer -> stale.add("offers: " + offer));
        boolean bargains = topic.isBlocking() || topic == Topics.VERDICT || topic == Topics.ACCEPTANCES;
        boolean onlyWishes =
                !ways.isEmpty() && ways.stream().allMatch(way -> way.says().kind() == ContributionKind.WISH);
        if (!card.offers().isEmpty() && (!bargains || onlyWishes)) {
            stale.add("offers: " + String.join(" ", card.offers()));
        }
    }

    private void named(String text, List<String> stale) {
        Matcher rule = RULE.matcher(text);
        while (rule.find()) {
            if (!ids.contains(rule.group())) {
                stale.add("rule: " + rule.group());
            }
        }
        Matcher number = NUMBER.matcher(text);
        while (number.find()) {
            String name = number.group(1);
            if (!isThere(name) && !isThere(name + ".low")) {
                stale.add("parameter: " + name);
            }
        }
    }

    private boolean isThere(String name) {
        try {
            parameters.parameter(name);
            return true;
        } catch (InvalidInputException e) {
            return false;
        }
    }

    private boolean isLater(String since) {
        String[] introduced = since.split("\\.");
        String[] current = version.split("\\.");
        if (!since.matches("\\d+(\\.\\d+)*")) {
            return true;
        }
        for (int i = 0; i < introduced.length; i++) {
            int own = Integer.parseInt(introduced[i]);
            int released = i < current.length && current[i].matches("\\d+") ? Integer.parseInt(current[i]) : 0;
            if (own != released) {
                return own > released;
            }
        }
        return false;
    }

    private static boolean same(String text, String asText) {
        return text.strip().equalsIgnoreCase(asText.strip());
    }
}
