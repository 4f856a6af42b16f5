package stoneprocess.rules.internal.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.function.Supplier;
import org.drools.model.DSL;
import org.drools.model.Drools;
import org.drools.model.Model;
import org.drools.model.PatternDSL;
import org.drools.model.Rule;
import org.drools.model.RuleItemBuilder;
import org.drools.model.functions.Block1;
import org.drools.model.impl.ModelImpl;
import org.drools.model.impl.RuleBuilder;
import stoneprocess.core.decision.Contribution;
import stoneprocess.core.decision.Topic;
import stoneprocess.core.plan.Cut;
import stoneprocess.core.plan.FinishTask;
import stoneprocess.core.plan.Sealer;
import stoneprocess.core.plan.Upkeep;
import stoneprocess.core.plan.Verdict;
import stoneprocess.core.survey.Heated;
import stoneprocess.core.survey.Occupied;
import stoneprocess.core.survey.Presence;
import stoneprocess.core.survey.ScratchClass;
import stoneprocess.core.survey.Setting;
import stoneprocess.core.survey.Sounding;
import stoneprocess.core.survey.Traffic;
import stoneprocess.core.survey.WearClass;
import stoneprocess.core.survey.WetUse;
import stoneprocess.rules.decide.Topics;
import stoneprocess.rules.feature.BuildUp.FloorHeating;
import stoneprocess.rules.feature.BuildUp.TapSound;
import stoneprocess.rules.feature.Condition.Scratches;
import stoneprocess.rules.feature.Condition.Wear;
import stoneprocess.rules.feature.Decided.Sealing;
import stoneprocess.rules.feature.Site.FloorDrain;
import stoneprocess.rules.feature.Site.FootTraffic;
import stoneprocess.rules.feature.Site.PeopleAbout;
import stoneprocess.rules.feature.Site.Place;
import stoneprocess.rules.feature.Site.UsedWet;

/**
 * Rules that are wrong on purpose, at least one for each kind of finding, in the form into which the build compiles the
 * chapters. No compiler of rules stands on the class path of the tests, so they are written in that form by hand.
 */
public final class FaultyRules {
    private static final String PACKAGE = "stoneprocess.rules.chapter.faulty";

    private FaultyRules() {}

    /** All of them, read as rules from elsewhere are. */
    public static CompiledRules all() {
        RuleItemBuilder<?> drain = when(FloorDrain.class, fact -> fact.known() == Presence.PRESENT);
        RuleItemBuilder<?> indoors = when(Place.class, fact -> fact.known() == Setting.INDOORS);
        RuleItemBuilder<?> gouged = when(Scratches.class, fact -> fact.known() == ScratchClass.GOUGED);
        Supplier<Contribution> noAcid = () -> Topics.UPKEEP.need(Upkeep.NO_ACID);
        Supplier<Contribution> mats = () -> Topics.UPKEEP.need(Upkeep.MATS);

        List<Rule> rules = new ArrayList<>();
        rules.add(rule("BAD-001", "Loose and sound at once", Topics.VERDICT)
                .build(
                        when(TapSound.class, fact -> fact.known() == Sounding.LOOSE),
                        when(TapSound.class, fact -> fact.known() == Sounding.SOUND),
                        says(() -> Topics.VERDICT.need(Verdict.REFUSE))));
        rules.add(rule("BAD-002", "A loose floor, which another rule refuses, waits", Topics.VERDICT)
                .build(
                        when(TapSound.class, fact -> fact.known() == Sounding.LOOSE),
                        says(() -> Topics.VERDICT.need(Verdict.HOLD))));
        rules.add(rule("BAD-003", "No acid by a drain indoors", Topics.UPKEEP).build(drain, indoors, says(noAcid)));
        rules.add(rule("BAD-004", "No acid indoors by a drain", Topics.UPKEEP).build(indoors, drain, says(noAcid)));
        rules.add(rule("BAD-005", "No acid indoors by a drain with people about", Topics.UPKEEP)
                .build(indoors, drain, when(PeopleAbout.class, fact -> fact.known() == Occupied.YES), says(noAcid)));
        rules.add(rule("BAD-006", "Neither sealed nor left bare", Topics.SEALER)
                .build(
                        when(FloorHeating.class, fact -> fact.known() == Heated.YES),
                        drain,
                        says(() -> Topics.SEALER.veto(Sealer.NONE, Sealer.IMPREGNATOR))));
        rules.add(rule("BAD-007", "A gouged floor is not cut at all", Topics.FIRST_CUT)
                .build(
                        gouged,
                        when(Wear.class, fact -> fact.known() == WearClass.NONE),
                        says(() -> Topics.FIRST_CUT.need(Cut.NONE))));
        rules.add(rule("BAD-008", "A gouged floor is cut", Topics.FIRST_CUT)
                .build(gouged, says(() -> Topics.FIRST_CUT.needAtLeast(Cut.HONE))));
        rules.add(rule("BAD-009", "A task that reads the sealer of its own stage", Topics.FINISH_TASKS)
                .build(
                        when(Sealing.class, fact -> fact.known() == Sealer.NONE),
                        says(() -> Topics.FINISH_TASKS.need(FinishTask.HAND_OVER))));
        rules.add(PatternDSL.rule(PACKAGE, "A card of things that are not there")
                .attribute(Rule.Attribute.AGENDA_GROUP, Topics.UPKEEP.stage().key())
                .metadata("id", "BAD-010")
                .metadata("because", "See BAD-999 and {value:no-such-number}")
                .metadata("source", "practice")
                .metadata("since", "9.0")
                .metadata("topic", Topics.UPKEEP.id())
                .build(when(UsedWet.class, fact -> fact.known() == WetUse.DRY), drain, says(mats)));
        rules.add(rule("BAD-011", "It looks for what is not there, and goes first", Topics.UPKEEP)
                .attribute(Rule.Attribute.SALIENCE, 10)
                .build(
                        DSL.not(PatternDSL.pattern(DSL.declarationOf(FootTraffic.class))
                                .expr("heavy", fact -> fact.known() == Traffic.HEAVY)),
                        drain,
                        says(mats)));
        rules.add(rule("BAD-012", "It says two things", Topics.UPKEEP)
                .build(drain, says(mats, () -> Topics.UPKEEP.need(Upkeep.DUST_MOP))));
        rules.add(rule("BAD-013", "Gloss is never watched", Topics.UPKEEP)
                .build(when(FloorDrain.class, fact -> true), says(() -> Topics.UPKEEP.veto(Upkeep.WATCH_GLOSS))));
        rules.add(rule("BAD-014", "A floor with a drain indoors is not cut at all", Topics.FIRST_CUT)
                .build(drain, indoors, says(() -> Topics.FIRST_CUT.need(Cut.NONE))));
        rules.add(rule("BAD-015", "A floor with a drain is cut", Topics.FIRST_CUT)
                .build(drain, says(() -> Topics.FIRST_CUT.needAtLeast(Cut.HONE))));
        Model model = new ModelImpl(PACKAGE).withRules(rules);
        return CompiledRules.of(List.of(model));
    }

    private static RuleBuilder rule(String id, String title, Topic<?> topic) {
        RuleBuilder builder = PatternDSL.rule(PACKAGE, title);
        builder.attribute(Rule.Attribute.AGENDA_GROUP, topic.stage().key());
        Map.of("id", id, "because", "It is wrong on purpose", "source", "practice", "since", "0.1", "topic", topic.id())
                .forEach(builder::metadata);
        return builder;
    }

    private static <T> RuleItemBuilder<?> when(Class<T> type, Predicate<T> condition) {
        return PatternDSL.pattern(DSL.declarationOf(type)).expr("condition on " + type, condition::test);
    }

    /** Makes a contribution anew at each firing, as a compiled rule does; the engine takes no object twice. */
    private static RuleItemBuilder<?> says(Supplier<Contribution> contribution) {
        Block1<Drools> block = drools -> drools.insert(contribution.get());
        return DSL.execute(block);
    }

    private static RuleItemBuilder<?> says(Supplier<Contribution> one, Supplier<Contribution> other) {
        Block1<Drools> block = drools -> {
            drools.insert(one.get());
            drools.insert(other.get());
        };
        return DSL.execute(block);
    }
}
