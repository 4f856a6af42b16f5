package stoneprocess.rules.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import stoneprocess.core.answer.NotPlanned;
import stoneprocess.core.answer.WayKind;
import stoneprocess.core.answer.WhyNotKind;
import stoneprocess.core.audit.FindingKind;
import stoneprocess.core.estimate.Basis;
import stoneprocess.core.estimate.ConsumableKind;
import stoneprocess.core.estimate.EstimateDifference;
import stoneprocess.core.estimate.PriceItem;
import stoneprocess.core.estimate.Remark;
import stoneprocess.core.estimate.Wait;
import stoneprocess.core.estimate.Work;
import stoneprocess.core.exposure.CarbonMonoxideLimit;
import stoneprocess.core.exposure.CircuitVerdict;
import stoneprocess.core.exposure.Coupling;
import stoneprocess.core.exposure.EngineCaution;
import stoneprocess.core.exposure.EngineVerdict;
import stoneprocess.core.exposure.GrindingTool;
import stoneprocess.core.exposure.LiftVerdict;
import stoneprocess.core.exposure.NoiseRule;
import stoneprocess.core.exposure.NoiseVerdict;
import stoneprocess.core.exposure.RespiratorNeed;
import stoneprocess.core.exposure.Role;
import stoneprocess.core.exposure.SilicaGap;
import stoneprocess.core.exposure.SilicaVerdict;
import stoneprocess.core.exposure.SlipCaution;
import stoneprocess.core.exposure.SlipPlace;
import stoneprocess.core.exposure.SlipPotential;
import stoneprocess.core.exposure.SlurryClass;
import stoneprocess.core.follow.Effect;
import stoneprocess.core.follow.NoteKind;
import stoneprocess.core.follow.Standing;
import stoneprocess.core.gloss.FaceState;
import stoneprocess.core.gloss.Film;
import stoneprocess.core.gloss.GainVerdict;
import stoneprocess.core.gloss.SetAside;
import stoneprocess.core.gloss.TargetVerdict;
import stoneprocess.core.log.EdgeLook;
import stoneprocess.core.log.EventKind;
import stoneprocess.core.log.EventState;
import stoneprocess.core.log.PadLook;
import stoneprocess.core.log.ScratchLook;
import stoneprocess.core.log.Sign;
import stoneprocess.core.log.TrialResult;
import stoneprocess.core.parameter.Parameter;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.plan.OfferKind;
import stoneprocess.core.plan.Precaution;
import stoneprocess.core.plan.Status;
import stoneprocess.core.quantity.UnitSystem;
import stoneprocess.core.removal.CuttingClass;
import stoneprocess.core.site.JobNote;
import stoneprocess.core.site.NoForecast;
import stoneprocess.core.site.NotQuoted;
import stoneprocess.core.site.Quotation.VisitKind;
import stoneprocess.core.site.VariantScope;
import stoneprocess.core.source.EvidenceGrade;
import stoneprocess.core.survey.ChangedBy;
import stoneprocess.core.survey.Coating;
import stoneprocess.core.survey.DamageKind;
import stoneprocess.core.survey.FieldKind;
import stoneprocess.core.survey.HowFound;
import stoneprocess.core.survey.Joints;
import stoneprocess.core.survey.LastTreatment;
import stoneprocess.core.survey.Presence;
import stoneprocess.core.survey.Sounding;
import stoneprocess.core.survey.SurfaceState;
import stoneprocess.core.survey.SurveyField;
import stoneprocess.core.survey.ZoneKind;
import stoneprocess.core.term.Term;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.core.tool.Powder;
import stoneprocess.core.topic.ContributionKind;
import stoneprocess.core.topic.FinishTask;
import stoneprocess.core.topic.Handling;
import stoneprocess.core.topic.Hazard;
import stoneprocess.core.topic.PolicyKind;
import stoneprocess.core.topic.Protection;
import stoneprocess.core.topic.Repair;
import stoneprocess.core.topic.Scope;
import stoneprocess.core.topic.Sealer;
import stoneprocess.core.topic.Stage;
import stoneprocess.core.topic.Task;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.core.topic.Upkeep;
import stoneprocess.core.topic.Verdict;
import stoneprocess.rules.feature.OnSite;
import stoneprocess.rules.internal.classify.Facts;
import stoneprocess.rules.text.document.Language;
import stoneprocess.rules.text.document.Texts;
import stoneprocess.rules.text.document.Wording;

class PhrasesTest {
    private static final Path TEXT = Path.of("src/main/java/stoneprocess/rules/text");
    private static final Path RULEBOOK = Path.of("src/main/java/stoneprocess/rules/rulebook");
    private static final Pattern LITERAL = Pattern.compile("\"([a-z][a-z0-9-]*(?:\\.[a-z0-9-]+)+)\"");
    private static final Language ENGLISH = Language.english();

    /** The keys that stand in the code of the text room; names of parameters and of a faulty entry are none. */
    private static Set<String> literalKeys() throws IOException {
        Set<String> keys = new TreeSet<>();
        for (Path room : List.of(TEXT, RULEBOOK)) {
            try (Stream<Path> files = Files.walk(room)) {
                for (Path file :
                        files.filter(path -> path.toString().endsWith(".java")).toList()) {
                    LITERAL.matcher(Files.readString(file)).results().forEach(found -> keys.add(found.group(1)));
                }
            }
        }
        keys.removeIf(key -> !ENGLISH.has(key)
                && Parameters.standard().all().stream()
                        .anyMatch(parameter -> parameter.name().startsWith(key)));
        keys.remove("notes.entry");
        return keys;
    }

    private static List<String> keysAboutTheWork() {
        List<String> keys = new ArrayList<>();
        LoggedFacts.CLASSES.forEach((fact, classes) -> {
            if (!fact.contains(":")) {
                classes.values().forEach(term -> keys.add(LoggedFacts.key(fact, term)));
            }
        });
        Facts.types().stream()
                .filter(type -> type.getEnclosingClass() == OnSite.class)
                .flatMap(type -> Facts.fields(type).stream())
                .forEach(field -> keys.add(LoggedFacts.field(field)));
        for (Class<?> type : List.of(OnSite.SignSeen.class, OnSite.EventStands.class, OnSite.BondRun.class)) {
            for (Presence presence : Presence.values()) {
                keys.add("fact." + type.getSimpleName() + "." + presence.key());
            }
        }
        return keys;
    }

    /** What a client neither orders nor sees, or what its own line of the quotation tells. */
    private static final Set<Term> HOW_A_CREW_WORKS = Set.of(
            Task.STOP_AND_SAMPLE,
            Task.PLAN_EDGES,
            Task.STOP_CLEANER,
            Task.PART_ACID_FROM_CHLORINE,
            Task.CALL_SPECIALIST,
            Task.SURVEY_APART,
            Task.DATA_SHEET,
            Task.MASK,
            Task.PROTECT_ROUTE,
            Task.COUNT_GRADES,
            Task.PLAN_BAYS,
            Task.PLAN_SHIFTS,
            Task.PLACE_FOR_SLURRY,
            Task.HEATING_OFF,
            Task.TRY_ON_STRIP,
            Task.SILENCE_DETECTORS,
            FinishTask.CHECK_RINSE,
            FinishTask.HAND_WIPE,
            FinishTask.SEAL_LATER,
            FinishTask.REOPEN,
            FinishTask.WARM_SLOWLY);

    private static List<String> neededKeys() throws IOException {
        List<String> keys = new ArrayList<>(literalKeys());
        FactWords.CLASSES.forEach((fact, classes) -> {
            keys.add("fact." + fact);
            classes.values().forEach(term -> keys.add(FactWords.key(fact, term)));
        });
        keys.addAll(keysAboutTheWork());
        keys.add("field.readings");
        SurveyField.all().stream()
                .filter(field -> field.kind() instanceof FieldKind.Measure)
                .forEach(field -> keys.add("form.example." + field.name()));
        Stream.of(ZoneKind.values()).forEach(kind -> keys.add("form." + Wording.key(kind)));
        Topics.all().forEach(topic -> keys.add("topic." + topic.id()));
        for (ContributionKind kind : ContributionKind.values()) {
            keys.add("rule.follows." + kind.key());
        }
        for (String topic : List.of("first-cut", "finish", "last-grit", "polishing-agent")) {
            for (String bound : List.of("need-at-least", "need-at-most", "veto-from")) {
                keys.add("rule." + bound + "." + topic);
            }
        }
        for (String topic : List.of("first-cut", "last-grit")) {
            keys.add(Wording.key(PolicyKind.ONE) + "." + topic);
        }
        List<Term> terms = new ArrayList<>();
        Topics.all().forEach(topic -> terms.addAll(topic.domain()));
        terms.addAll(List.of(Status.values()));
        terms.addAll(List.of(TrackKind.values()));
        terms.addAll(List.of(OfferKind.values()));
        terms.addAll(List.of(HowFound.values()));
        terms.addAll(List.of(SurfaceState.values()));
        terms.addAll(List.of(Stage.values()));
        terms.addAll(List.of(PolicyKind.values()));
        terms.addAll(List.of(Protection.values()));
        terms.addAll(List.of(Standing.values()));
        terms.addAll(List.of(NoteKind.values()));
        terms.addAll(List.of(Effect.values()));
        terms.addAll(List.of(EventKind.values()));
        terms.addAll(List.of(EventState.values()));
        terms.addAll(List.of(Sign.values()));
        terms.addAll(List.of(TrialResult.values()));
        terms.addAll(List.of(ScratchLook.values()));
        terms.addAll(List.of(PadLook.values()));
        terms.addAll(List.of(EdgeLook.values()));
        terms.addAll(List.of(FaceState.values()));
        terms.addAll(List.of(GainVerdict.values()));
        terms.addAll(List.of(TargetVerdict.values()));
        terms.addAll(List.of(Precaution.values()));
        terms.addAll(List.of(CarbonMonoxideLimit.values()));
        terms.addAll(List.of(CircuitVerdict.values()));
        terms.addAll(List.of(Coupling.values()));
        terms.addAll(List.of(EngineCaution.values()));
        terms.addAll(List.of(EngineVerdict.values()));
        terms.addAll(List.of(GrindingTool.values()));
        terms.addAll(List.of(LiftVerdict.values()));
        terms.addAll(List.of(NoiseRule.values()));
        terms.addAll(List.of(NoiseVerdict.values()));
        terms.addAll(List.of(RespiratorNeed.values()));
        terms.addAll(List.of(SilicaGap.values()));
        terms.addAll(List.of(SilicaVerdict.values()));
        terms.addAll(List.of(SlipCaution.values()));
        terms.addAll(List.of(SlipPlace.values()));
        terms.addAll(List.of(SlipPotential.values()));
        terms.addAll(List.of(SlurryClass.values()));
        terms.addAll(List.of(FindingKind.values()));
        terms.addAll(List.of(EvidenceGrade.values()));
        terms.addAll(List.of(Protection.values()));
        terms.addAll(List.of(Scope.values()));
        terms.addAll(List.of(Role.values()));
        terms.addAll(List.of(WhyNotKind.values()));
        terms.addAll(List.of(WayKind.values()));
        terms.addAll(List.of(ChangedBy.values()));
        terms.addAll(List.of(Work.values()));
        terms.addAll(List.of(Wait.values()));
        terms.addAll(List.of(Basis.CREW_TIMING, Basis.GIVEN));
        terms.addAll(List.of(ConsumableKind.values()));
        terms.addAll(List.of(PriceItem.values()));
        terms.addAll(List.of(CuttingClass.values()));
        terms.addAll(List.of(JobNote.values()));
        terms.addAll(List.of(VariantScope.values()));
        terms.addAll(List.of(NotQuoted.values()));
        terms.addAll(List.of(VisitKind.values()));
        terms.addAll(List.of(Remark.values()));
        terms.addAll(List.of(NoForecast.values()));
        terms.addAll(List.of(SetAside.Reason.values()));
        terms.addAll(List.of(Film.values()));
        for (SurveyField<?> field : SurveyField.all()) {
            if (field.kind() instanceof FieldKind.Choice choice) {
                Stream.of(choice.type().getEnumConstants())
                        .map(Term.class::cast)
                        .forEach(terms::add);
            }
        }
        terms.addAll(List.of(Powder.values()));
        terms.addAll(List.of(HazardRank.values()));
        terms.addAll(List.of(NotPlanned.Why.values()));
        for (DamageKind kind : DamageKind.values()) {
            keys.add(Wording.key(kind) + ".treatment");
        }
        List<Term> told = new ArrayList<>(List.of(Joints.OPEN, LastTreatment.COATING));
        told.addAll(EnumSet.range(Coating.WAX, Coating.EPOXY));
        told.addAll(EnumSet.complementOf(EnumSet.of(Sounding.SOUND)));
        told.forEach(term -> keys.add(Wording.key(term) + ".treatment"));
        terms.addAll(List.of(WhatElseWords.Effect.values()));
        terms.forEach(term -> keys.add(Wording.key(term)));
        for (Hazard hazard : Hazard.values()) {
            for (String part : List.of("exposed", "limit")) {
                keys.add(Wording.key(hazard) + "." + part);
            }
            keys.add(Wording.key(hazard) + ".brief");
        }
        for (GainVerdict verdict : GainVerdict.values()) {
            keys.add(Wording.key(verdict) + ".gain");
        }
        for (TargetVerdict verdict : TargetVerdict.values()) {
            keys.add(Wording.key(verdict) + ".headline");
            keys.add(Wording.key(verdict) + ".way");
        }
        keys.add(Wording.key(TargetVerdict.FINER_GRIT) + ".way-beyond");
        for (TargetVerdict verdict : List.of(TargetVerdict.OPEN, TargetVerdict.OUT_OF_REACH)) {
            keys.add(Wording.key(verdict) + ".way-at-best");
        }
        for (Status status : List.of(Status.REFUSED, Status.UNDECIDED, Status.IMPASSE)) {
            keys.add(Wording.key(status) + ".no-plan");
        }
        for (MachineClass machine : MachineClass.values()) {
            keys.add(Wording.key(machine) + ".hour");
        }
        for (EstimateDifference.Direction direction : EstimateDifference.Direction.values()) {
            keys.add("compared.by." + direction.key());
        }
        for (String work : List.of("by-hand", "cut-grout", "edges-alone", "densify", "powder")) {
            keys.add("estimate.work." + work);
        }
        for (String work : List.of(
                "masking", "test-area", "slurry", "sealing", "by-hand", "edges-alone", "densify", "powder", "waves")) {
            keys.add("scope." + work);
        }
        Stream.of(Task.values(), FinishTask.values(), Repair.values())
                .flatMap(Stream::of)
                .filter(term -> !HOW_A_CREW_WORKS.contains(term))
                .forEach(term -> keys.add(Wording.key((Term) term) + ".scope"));
        keys.add(Wording.key(Handling.REGROUT_PITS) + ".scope");
        keys.add(Wording.key(WhyNotKind.OUTWEIGHED) + ".verdict");
        for (Verdict verdict : Verdict.values()) {
            List.of(".why-not", ".why-not-instead", ".how-to")
                    .forEach(ending -> keys.add(Wording.key(verdict) + ending));
        }
        for (OfferKind offer : OfferKind.values()) {
            keys.add(Wording.key(offer) + ".gives-up");
        }
        for (TrackKind track : TrackKind.values()) {
            keys.add(Wording.key(track) + ".name");
            keys.add(Wording.key(track) + ".column");
        }
        keys.add(Wording.key(Sealer.IMPREGNATOR) + ".check");
        for (Role role : Role.values()) {
            keys.add(Wording.key(role) + ".decides");
        }
        Stream.of(NoiseVerdict.values(), SlipPotential.values(), SlurryClass.values())
                .flatMap(Stream::of)
                .forEach(term -> keys.add(Wording.key((Term) term) + ".sentence"));
        for (String part : List.of("reach", "height", "travel", "turn", "frequency", "hold")) {
            keys.add("lifting.part." + part);
            keys.add("lifting.part." + part + ".remedy");
        }
        SurveyField.all().forEach(field -> keys.add("field." + field.name()));
        for (DamageKind kind : DamageKind.values()) {
            keys.add("field.damages." + kind.key());
            keys.add("how.damages." + kind.key());
        }
        return keys;
    }

    @Test
    void every_key_that_a_text_can_ask_for_has_a_phrase() throws IOException {
        List<String> missing =
                neededKeys().stream().filter(key -> !ENGLISH.has(key)).toList();
        assertThat(missing).isEmpty();
        assertThat(ENGLISH.keys())
                .allSatisfy(key -> assertThat(ENGLISH.phrase(key)).isNotBlank());
    }

    private static final String VARIANTS =
            "(\\.(owner|caution|gated|uncut|short|brief|small|large|clean|lanes|no-slip|nothing-cures|below-polish|one-grit|historic|perhaps-historic|on-resin|outdoors|wet-room|treads|no-log|happened|cleared|need|powdered|aggregate|concrete|poured))+$";

    @Test
    void no_phrase_is_left_over() throws IOException {
        Set<String> used = new HashSet<>(neededKeys());
        List<String> leftOver = ENGLISH.keys().stream()
                .filter(key -> !used.contains(key))
                .filter(key -> !key.endsWith(".name"))
                .filter(key -> !used.contains(key.replaceFirst(VARIANTS, "")))
                .filter(key -> !used.contains(key.replaceFirst("\\.wait(\\.mortar)?(\\.poured)?$", "")))
                .filter(key -> !used.contains(key.replaceFirst("^change\\.work\\.", "field.")))
                .filter(key -> !used.contains(key.replaceFirst("^how\\.", "field.")))
                .filter(key -> !used.contains(key.replaceFirst("^field-share\\.", "field.")))
                .filter(key -> !used.contains(key.replaceFirst("^quotation\\.condition\\.", "field.")))
                .filter(key -> !used.contains(key.replaceFirst("^form\\.", "")))
                .filter(key -> !key.startsWith("list.") && !key.startsWith("parameter."))
                .toList();
        assertThat(leftOver).isEmpty();
    }

    @Test
    void every_parameter_that_a_phrase_names_is_shipped() {
        for (String key : ENGLISH.keys()) {
            if (ENGLISH.phrase(key).matches(".*\\{(value|range):.*")) {
                assertThat(Texts.english().in(UnitSystem.US).word(anyArguments(key)))
                        .isNotBlank();
            }
        }
        assertThat(ENGLISH.keys().stream()
                        .filter(key -> key.startsWith("parameter."))
                        .map(key -> key.substring("parameter.".length())))
                .isNotEmpty()
                .allMatch(name -> Parameters.standard().all().stream()
                        .map(Parameter::name)
                        .anyMatch(parameter -> parameter.equals(name) || parameter.equals(name + ".low")));
    }

    private static Wording anyArguments(String key) {
        Wording.Phrase phrase = Wording.phrase(key);
        for (String name : List.of("mass", "time")) {
            phrase = phrase.with(name, "any");
        }
        return phrase;
    }

    @Test
    void numbers_in_phrases_are_printed_in_the_readers_units() {
        assertThat(Texts.english().word(Wording.of(Upkeep.MATS)))
                .isEqualTo("Mats at the outer doors, 4.5-6 m long where there is room, partly outside.");
        assertThat(Texts.english().in(UnitSystem.US).word(Wording.of(Upkeep.MATS)))
                .contains("14.8-19.7 ft long");
    }
}
