package stoneprocess.rules.text;

import static stoneprocess.rules.text.document.Wording.phrase;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import stoneprocess.core.estimate.JobStep;
import stoneprocess.core.estimate.StepKind;
import stoneprocess.core.plan.Plan;
import stoneprocess.core.plan.PlannedStep;
import stoneprocess.core.plan.Track;
import stoneprocess.core.quantity.Mass;
import stoneprocess.core.quantity.Quantity;
import stoneprocess.core.quantity.Range;
import stoneprocess.core.quantity.Volume;
import stoneprocess.core.tool.AbrasiveGrade;
import stoneprocess.core.tool.MachineClass;
import stoneprocess.core.topic.AddedWeight;
import stoneprocess.core.topic.Check;
import stoneprocess.core.topic.Densifier;
import stoneprocess.core.topic.Handling;
import stoneprocess.core.topic.PolishingAgent;
import stoneprocess.core.topic.Subject;
import stoneprocess.core.topic.Topic;
import stoneprocess.core.topic.Topics;
import stoneprocess.core.topic.TrackKind;
import stoneprocess.rules.text.document.Item;
import stoneprocess.rules.text.document.Precision;
import stoneprocess.rules.text.document.StatedValue;
import stoneprocess.rules.text.document.Wording;
import stoneprocess.rules.text.document.Wording.Joint;

/**
 * The work of a plan as one table in its order: a row for each grit with what differs from row to row, and rows for the
 * coats between and after them. Tool, water and checks are those of the first track, which is the open field where it is
 * cut; {@link StepNotes} tells what the other tracks have of their own.
 */
final class StepTable {
    private static final Wording NOTHING = Wording.name("");

    private final Plan plan;
    private final StepNotes notes;
    private final Optional<JobStep> powder;
    private final double squareMetres;
    private final boolean oneMachine;
    private final List<List<Wording>> rows = new ArrayList<>();

    private StepTable(Plan plan, StepNotes notes, PlanTotals totals) {
        this.plan = plan;
        this.notes = notes;
        this.powder = totals.job().stream()
                .flatMap(job -> job.steps().stream())
                .filter(step -> step.kind() == StepKind.POWDER)
                .findFirst();
        this.squareMetres = totals.job().map(job -> job.area().squareMetres()).orElse(0.0);
        this.oneMachine = notes.isOneMachine(lead());
    }

    static Item of(Plan plan, StepNotes notes, PlanTotals totals) {
        StepTable table = new StepTable(plan, notes, totals);
        if (plan.densifier() == Densifier.BEFORE_CUTS) {
            table.between(phrase("table.densify"), NOTHING);
        }
        notes.grades().forEach(table::rowsOf);
        if (plan.polishingAgent() != PolishingAgent.NONE) {
            table.powder();
        }
        List<Wording> headings = table.headings();
        return new Item.Table(Collections.nCopies(headings.size(), Item.Align.LEFT), headings, table.rows);
    }

    private Track lead() {
        return plan.tracks().get(0);
    }

    private List<Wording> headings() {
        List<Wording> headings = new ArrayList<>();
        headings.add(phrase("table.grit"));
        headings.add(phrase(oneMachine ? "table.weight" : "table.tool").with("unit", unit(new Mass(0))));
        plan.tracks().forEach(track -> headings.add(Wording.of(track.kind(), "column")));
        headings.add(
                notes.hasLitres()
                        ? phrase("table.water-litres").with("unit", unit(new Volume(0)))
                        : phrase("table.water"));
        headings.add(phrase("table.check"));
        return headings;
    }

    private void rowsOf(AbrasiveGrade grade) {
        List<Wording> row = new ArrayList<>();
        row.add(new Wording.Stating(notes.pathsOver(grade), ValueWords.grade(grade)));
        Optional<PlannedStep> led = step(lead(), grade);
        row.add(led.map(this::tool).orElse(NOTHING));
        for (Track track : plan.tracks()) {
            row.add(step(track, grade).map(step -> passes(track, step)).orElse(NOTHING));
        }
        PlannedStep shown = notes.shown(grade);
        row.add(water(shown));
        row.add(checks(shown));
        rows.add(row);
        if (shown.handling().contains(Handling.REGROUT_PITS)) {
            between(phrase("table.regrout"), phrase("table.regrout-cure"));
            if (grade.equals(notes.grades().get(notes.grades().size() - 1))) {
                between(phrase("table.again").with("grade", ValueWords.grade(grade)), phrase("table.again-check"));
            }
        }
        if (notes.densifiedAfter(plan.densifier()).filter(grade::equals).isPresent()) {
            between(
                    phrase(plan.densifier() == Densifier.BEFORE_CUTS ? "table.densify-again" : "table.densify"),
                    NOTHING);
        }
    }

    static Optional<PlannedStep> step(Track track, AbrasiveGrade grade) {
        return track.steps().stream().filter(step -> step.grade().equals(grade)).findFirst();
    }

    private Wording tool(PlannedStep step) {
        Subject subject = PlanWords.subject(lead().kind(), step);
        Wording weight = PlanWords.stating(
                new StatedValue(Topics.ADDED_WEIGHT, subject, step.weight().key()), weight(step));
        if (oneMachine) {
            return weight;
        }
        StatedValue machine =
                new StatedValue(Topics.MACHINE, subject, step.machine().key());
        return phrase("table.machine")
                .with("machine", PlanWords.stating(machine, PlanWords.shortly(step.machine())))
                .with("weight", weight);
    }

    private static Wording weight(PlannedStep step) {
        Wording.Phrase weight = PlanWords.shortly(step.weight());
        return step.weight() == AddedWeight.NONE ? weight : weight.with("mass", figures(step.addedMass()));
    }

    private static Wording passes(Track track, PlannedStep step) {
        return PlanWords.stating(ofStep(Topics.PASSES, track.kind(), step, step.passes()), passes(step.passes()));
    }

    private static <V> StatedValue ofStep(Topic<V> topic, TrackKind track, PlannedStep step, V value) {
        return new StatedValue(topic, PlanWords.subject(track, step), String.join(" ", topic.keys(List.of(value))));
    }

    static Wording passes(Range<Integer> passes) {
        return passes.low().equals(passes.high())
                ? Wording.number(passes.low())
                : phrase("table.range").with("low", passes.low()).with("high", passes.high());
    }

    /** Only the open field has an area, so that only it has litres. */
    private Wording water(PlannedStep step) {
        Wording level = new Wording.Stating(notes.sameWater(step), PlanWords.shortly(step.water()));
        return step.litresPerPass()
                .<Wording>map(litres -> phrase("table.litres")
                        .with("level", level)
                        .with(
                                "litres",
                                PlanWords.stating(
                                        ofStep(Topics.LITRES, TrackKind.OPEN_FIELD, step, litres), amount(litres))))
                .orElse(level);
    }

    private static Wording amount(Range<Volume> litres) {
        return figures(Range.of(whole(litres.low()), whole(litres.high())));
    }

    /** A range without its unit, which stands above the column. */
    private static Wording figures(Range<? extends Quantity> range) {
        return phrase("table.range")
                .with("low", Wording.amount(range.low(), Precision.NUMBER))
                .with("high", Wording.amount(range.high(), Precision.NUMBER));
    }

    private static Wording unit(Quantity quantity) {
        return Wording.amount(quantity, Precision.UNIT);
    }

    /** Nobody measures tenths of a litre out of a tank. */
    private static Volume whole(Volume volume) {
        return volume.litres() < 1 ? volume : new Volume(Math.rint(volume.litres()));
    }

    private Wording checks(PlannedStep step) {
        List<Check> extra = step.checks().stream()
                .filter(check -> !notes.alwaysChecked().contains(check))
                .toList();
        return extra.isEmpty()
                ? NOTHING
                : Wording.list(
                        Joint.COMMA,
                        extra,
                        check -> new Wording.Stating(notes.sameCheck(step, check), PlanWords.shortly(check)));
    }

    private void between(Wording name, Wording last) {
        List<Wording> row = new ArrayList<>(Collections.nCopies(plan.tracks().size() + 4, NOTHING));
        row.set(0, name);
        row.set(row.size() - 1, last);
        rows.add(row);
    }

    /** Powder is worked with the machine of the last grit, with the usual passes and water of the estimate. */
    private void powder() {
        List<PlannedStep> steps = lead().steps();
        List<Wording> row = new ArrayList<>();
        row.add(phrase("table.powder"));
        MachineClass machine = steps.get(steps.size() - 1).machine();
        row.add(powder.isEmpty() || oneMachine ? NOTHING : PlanWords.shortly(machine));
        for (Track track : plan.tracks()) {
            boolean counted = track == lead() || track.kind() == TrackKind.EDGE;
            row.add(powder.filter(
                            step -> counted && (track == lead() || step.edges().isPresent()))
                    .map(step -> passes(step.passes()))
                    .orElse(NOTHING));
        }
        row.add(powder.<Wording>map(step -> amount(Range.of(
                        new Volume(step.water().low().litresPerSquareMetre() * squareMetres),
                        new Volume(step.water().high().litresPerSquareMetre() * squareMetres))))
                .orElse(NOTHING));
        row.add(phrase("table.powder-check"));
        rows.add(row);
    }
}
