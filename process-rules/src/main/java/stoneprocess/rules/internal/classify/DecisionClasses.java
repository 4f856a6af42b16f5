package stoneprocess.rules.internal.classify;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import stoneprocess.core.decision.Decision;
import stoneprocess.core.decision.Reason;
import stoneprocess.core.stone.MetalBondUse;
import stoneprocess.core.survey.Presence;
import stoneprocess.core.tool.Bond;
import stoneprocess.core.tool.Powder;
import stoneprocess.core.topic.ContributionKind;
import stoneprocess.core.topic.Cut;
import stoneprocess.core.topic.PolishingAgent;
import stoneprocess.core.topic.Repair;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Task;
import stoneprocess.core.topic.Topics;
import stoneprocess.rules.feature.RepairResult;

/** What earlier decisions mean to a later stage, as classes. */
final class DecisionClasses {
    private static final Set<Repair> OXIDE_REPAIRS = EnumSet.of(Repair.POWDER_FIRST, Repair.POWDER_ON_THE_FIELD);
    private static final Set<Task> POULTICES = EnumSet.of(Task.POULTICE_OIL, Task.POULTICE_ORGANIC, Task.POULTICE_RUST);

    private DecisionClasses() {}

    /** What is excluded only because of an unknown fact counts as not known. */
    static Set<MetalBondUse> metalBond(Situation situation) {
        List<Reason> exclusions = situation.decision(Topics.BONDS, Subject.FLOOR).stream()
                .flatMap(decision -> decision.won().stream())
                .filter(reason -> reason.kind() == ContributionKind.VETO)
                .filter(reason -> reason.values().contains(Bond.METAL))
                .toList();
        if (exclusions.isEmpty()) {
            return EnumSet.of(MetalBondUse.ALLOWED);
        }
        return exclusions.stream().anyMatch(Reason::certain)
                ? EnumSet.of(MetalBondUse.EXCLUDED)
                : EnumSet.allOf(MetalBondUse.class);
    }

    static Set<Cut> coarsestCut(Situation situation) {
        return Stream.of(Subject.OPEN_FIELD, Subject.EDGE, Subject.LOCAL_REPAIR)
                .flatMap(track -> situation.values(Topics.FIRST_CUT, track).stream())
                .max(Comparator.naturalOrder())
                .<Set<Cut>>map(EnumSet::of)
                .orElseGet(() -> EnumSet.allOf(Cut.class));
    }

    /** Whether preparation, repairs or the last step use a kind of powder. */
    static Set<Presence> powderUse(Situation situation, Powder powder) {
        boolean used = switch (powder) {
            case NEUTRAL_OXIDE ->
                agent(situation, PolishingAgent.NEUTRAL_OXIDE)
                        || situation.values(Topics.REPAIRS).stream().anyMatch(OXIDE_REPAIRS::contains);
            case OXALIC_COMPOUND -> agent(situation, PolishingAgent.OXALIC_COMPOUND);
            case CRYSTALLISER -> agent(situation, PolishingAgent.CRYSTALLISER);
            case POULTICE -> situation.values(Topics.PREPARATION).stream().anyMatch(POULTICES::contains);
        };
        return EnumSet.of(used ? Presence.PRESENT : Presence.NONE);
    }

    private static boolean agent(Situation situation, PolishingAgent agent) {
        return situation.values(Topics.POLISHING_AGENT).contains(agent);
    }

    /** A wish for a coarser cut than the one decided was excluded. */
    static Set<RepairResult> localMarks(Situation situation) {
        Optional<Decision<Cut>> local = situation.decision(Topics.FIRST_CUT, Subject.LOCAL_REPAIR);
        Cut cut = situation.values(Topics.FIRST_CUT, Subject.LOCAL_REPAIR).stream()
                .findFirst()
                .orElse(Cut.NONE);
        if (cut == Cut.NONE) {
            return EnumSet.of(RepairResult.NONE);
        }
        boolean softens = local.stream()
                .flatMap(decision -> decision.won().stream())
                .filter(reason -> reason.kind() == ContributionKind.WISH)
                .anyMatch(reason -> !reason.values().get(0).equals(cut));
        return EnumSet.of(softens ? RepairResult.SOFTENS : RepairResult.CLEARS);
    }
}
