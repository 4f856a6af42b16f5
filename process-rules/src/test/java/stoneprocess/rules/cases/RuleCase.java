package stoneprocess.rules.cases;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stoneprocess.core.term.Term;
import stoneprocess.core.topic.Contribution;
import stoneprocess.core.topic.ContributionKind;
import stoneprocess.core.topic.Subject;
import stoneprocess.rules.feature.OneOfMany;
import stoneprocess.rules.internal.classify.Facts;
import stoneprocess.rules.internal.engine.FactPattern;

/**
 * What one rule should read and say, written from its title and reason and from the trade, not from the rule; the
 * notation stands beside the cases.
 *
 * @param rule id of the rule
 * @param parts what it reads
 * @param kind need, wish or veto
 * @param subject key of what it is about; empty for the floor, or for whichever step it matches
 * @param values what it says, as keys and ranges
 */
public record RuleCase(String rule, List<Part> parts, ContributionKind kind, String subject, String values) {
    private static final Path FOLDER = Path.of("src/test/resources/rule-cases");

    private enum How {
        KNOWN,
        OPEN,
        IS,
        MAY_BE
    }

    /**
     * One fact of a rule.
     *
     * @param type simple name of its type
     * @param which constant that it is about, where there is one fact for each
     * @param classes part of the fact → how it is met; the part {@code mayBe} for a fact of one part
     */
    public record Part(String type, String which, Map<String, Wanted> classes) {
        boolean accepts(Object fact) {
            if (fact instanceof OneOfMany<?> one && !which.isEmpty() && !which.equals(((Enum<?>) one.which()).name())) {
                return false;
            }
            return classes.entrySet().stream()
                    .allMatch(entry -> entry.getValue().met(component(fact, entry.getKey())));
        }

        private static Object component(Object fact, String name) {
            try {
                for (RecordComponent component : fact.getClass().getRecordComponents()) {
                    if (component.getName().equals(name)) {
                        return component.getAccessor().invoke(fact);
                    }
                }
            } catch (ReflectiveOperationException e) {
                throw new IllegalStateException(fact + " cannot be read", e);
            }
            throw new IllegalArgumentException(fact.getClass().getSimpleName() + " has no part " + name);
        }
    }

    private record Wanted(How how, Set<String> classes) {
        boolean met(Object part) {
            Set<?> possible = part instanceof Set<?> several ? several : Set.of(part);
            Set<String> names =
                    possible.stream().map(one -> ((Enum<?>) one).name()).collect(Collectors.toSet());
            return switch (how) {
                case KNOWN -> names.size() == 1;
                case OPEN -> names.size() > 1;
                case IS -> names.size() == 1 && classes.containsAll(names);
                case MAY_BE -> names.stream().anyMatch(classes::contains);
            };
        }
    }

    /** All cases, by chapter and rule. */
    public static List<RuleCase> all() {
        try (Stream<Path> files = Files.list(FOLDER)) {
            List<RuleCase> cases = new ArrayList<>();
            for (Path file : files.filter(name -> name.toString().endsWith(".tsv"))
                    .sorted()
                    .toList()) {
                Files.readAllLines(file).stream()
                        .skip(1)
                        .filter(line -> !line.isBlank() && !line.startsWith("#"))
                        .map(line -> line.split("\t"))
                        .map(row -> of(row[0], row[1], row[2]))
                        .forEach(cases::add);
            }
            return cases;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static RuleCase of(String rule, String reads, String says) {
        String[] said = says.split(" ", 3);
        String[] topic = said[1].split("@");
        return new RuleCase(
                rule,
                Arrays.stream(reads.split(" & ")).map(RuleCase::part).toList(),
                ContributionKind.valueOf(said[0].toUpperCase(Locale.ROOT)),
                topic.length > 1 ? topic[1] : "",
                topic[0] + " " + (said.length > 2 ? said[2] : ""));
    }

    private static Part part(String text) {
        String[] words = text.split(" ");
        String type = words[0];
        String which = "";
        if (type.endsWith("]")) {
            which = type.substring(type.indexOf('[') + 1, type.length() - 1);
            type = type.substring(0, type.indexOf('['));
        }
        if (which.contains("=")) {
            Map<String, Wanted> parts = Arrays.stream(which.split(","))
                    .map(one -> one.split("="))
                    .collect(Collectors.toMap(one -> one[0], one -> new Wanted(How.IS, classes(one[1]))));
            return new Part(type, "", parts);
        }
        if (words.length == 1) {
            return new Part(type, which, Map.of());
        }
        return new Part(type, which, Map.of("mayBe", wanted(text, words)));
    }

    private static Wanted wanted(String text, String[] words) {
        if (words[1].equals("may") && words.length == 4 && words[2].equals("be")) {
            return new Wanted(How.MAY_BE, classes(words[3]));
        }
        if (!words[1].equals("is") || words.length != 3) {
            throw new IllegalArgumentException("Not a part of a rule case: " + text);
        }
        return switch (words[2]) {
            case "known" -> new Wanted(How.KNOWN, Set.of());
            case "open" -> new Wanted(How.OPEN, Set.of());
            default -> new Wanted(How.IS, classes(words[2]));
        };
    }

    private static Set<String> classes(String text) {
        return Set.of(text.split("\\|"));
    }

    /**
     * Where a rule differs from the case; empty when it does not.
     *
     * @param conditions what the rule reads; empty when there is no such rule
     * @param says what it says of facts that the case accepts
     */
    public List<String> misses(List<FactPattern> conditions, Function<List<Object>, List<Contribution>> says) {
        List<String> misses = new ArrayList<>();
        List<Part> left = new ArrayList<>(parts);
        List<Object> witness = new ArrayList<>();
        for (FactPattern condition : conditions) {
            String type = condition.type().getSimpleName();
            Part part = left.stream()
                    .filter(one -> one.type().equals(type))
                    .findFirst()
                    .orElse(null);
            if (part == null) {
                misses.add("reads " + type);
                continue;
            }
            left.remove(part);
            List<Object> space = Facts.space(condition.type());
            space.stream().filter(part::accepts).findFirst().ifPresent(witness::add);
            space.stream()
                    .filter(fact -> part.accepts(fact) != condition.matches(fact))
                    .findFirst()
                    .ifPresent(fact -> misses.add((condition.matches(fact) ? "accepts " : "does not accept ") + fact));
        }
        left.forEach(part -> misses.add("does not read " + part.type()));
        if (misses.isEmpty()) {
            List<String> said = says.apply(witness).stream().map(this::differs).toList();
            if (said.size() != 1) {
                misses.add("says " + said.size() + " things");
            }
            said.stream().filter(text -> !text.isEmpty()).forEach(misses::add);
        }
        return misses;
    }

    /** What is said otherwise; empty when nothing is. */
    private String differs(Contribution said) {
        List<String> domain = Term.keys(said.topic().domain());
        List<String> wanted = new ArrayList<>();
        String topic = values.substring(0, values.indexOf(' '));
        for (String one : values.substring(values.indexOf(' ') + 1).split("\\|")) {
            int dots = one.indexOf("..");
            if (dots < 0) {
                if (!one.isEmpty()) {
                    wanted.add(one);
                }
                continue;
            }
            int from = dots == 0 ? 0 : domain.indexOf(one.substring(0, dots));
            int to = dots + 2 == one.length() ? domain.size() - 1 : domain.indexOf(one.substring(dots + 2));
            wanted.addAll(domain.subList(from, to + 1));
        }
        List<String> is = Term.keys(said.values());
        // The order of wishes is an order of preference; needs and vetoes have none.
        boolean same = kind == ContributionKind.WISH
                ? is.equals(wanted)
                : Set.copyOf(is).equals(Set.copyOf(wanted));
        boolean about = said.subject() instanceof Subject.OfTrack track
                ? track.track().key().equals(subject)
                : subject.isEmpty();
        return said.kind() == kind && said.topic().id().equals(topic) && same && about
                ? ""
                : "says " + said.kind() + " " + said.topic().id() + " " + said.subject() + " " + is;
    }
}
