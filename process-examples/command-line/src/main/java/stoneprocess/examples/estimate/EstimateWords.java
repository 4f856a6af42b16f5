package stoneprocess.examples.estimate;

import java.util.Map;
import stoneprocess.core.estimate.ConsumableKind;
import stoneprocess.core.estimate.Line;
import stoneprocess.core.estimate.Remark;
import stoneprocess.core.estimate.RouteCheck;
import stoneprocess.core.site.JobNote;

/** Words for what an estimate holds. */
final class EstimateWords {
    private static final Map<String, String> PARAMETERS = Map.ofEntries(
            Map.entry("estimate.mobilisation", "coming and leaving once"),
            Map.entry("estimate.masking", "masking, running length an hour"),
            Map.entry("estimate.test-area", "the test area"),
            Map.entry("estimate.walk.metal", "walking a usual metal tool on marble"),
            Map.entry("estimate.walk.transition", "walking a usual transition tool on marble"),
            Map.entry("estimate.walk.resin", "walking a usual resin tool on marble"),
            Map.entry("estimate.walk.powder", "walking a usual powder pad on marble"),
            Map.entry("estimate.overlap", "overlap of the paths"),
            Map.entry("estimate.bay", "length of a path in the bay"),
            Map.entry("estimate.turn", "turning at the end of a path"),
            Map.entry("estimate.handling", "hose, cable and looking, of the time at the machine"),
            Map.entry("estimate.edges", "hand tool along edges, one grit"),
            Map.entry("estimate.rinsing", "rinsing and picking up, of the cutting"),
            Map.entry("estimate.set-up", "changing tools and moving, of cutting and rinsing"),
            Map.entry("estimate.rework", "going over again, of cutting and rinsing"),
            Map.entry("estimate.sealing", "laying on and wiping off a sealer"),
            Map.entry("estimate.upkeep.strip", "stripping one coat"),
            Map.entry("estimate.upkeep.build-up", "stripping where coats have built up, of that rate"),
            Map.entry("estimate.pads.metal", "floor that a set of metal pads lasts for"),
            Map.entry("estimate.pads.transition", "floor that a set of transition pads lasts for"),
            Map.entry("estimate.pads.resin", "floor that a set of resin pads lasts for"),
            Map.entry("estimate.powder-kilogram", "floor for one kilogram of powder"),
            Map.entry("estimate.rinse-water", "water for rinsing"),
            Map.entry("estimate.slurry-kept", "water that is picked up again"),
            Map.entry("estimate.removal-of-grain", "depth cut, of the grain that scratched before"),
            Map.entry("estimate.load", "load of the machine, of its rated power"));

    private EstimateWords() {}

    static boolean has(String parameter) {
        return PARAMETERS.containsKey(parameter);
    }

    /** What a parameter is about; its name where this page has no words for it. */
    static String parameter(String name) {
        return PARAMETERS.getOrDefault(name, name);
    }

    /** A key in plain words: {@code resin-800} is resin 800. */
    static String plain(String key) {
        return key.replace('-', ' ');
    }

    static String work(Line.WorkLine line) {
        String subject = line.subject().map(EstimateWords::plain).orElse("");
        return switch (line.work()) {
            case MOBILISATION -> "coming, unloading, leaving";
            case MASKING -> "masking";
            case TEST_AREA -> "test area";
            case OTHER_WORK -> subject;
            case OPEN_FIELD -> subject + ", open field";
            case EDGES -> subject + ", edges";
            case RINSING -> subject + ", rinsing";
            case SETTING_UP -> subject + ", setting up";
            case REWORK -> subject + ", going over again";
            case SEALING -> "sealing";
        };
    }

    static String wait(Line.WaitLine line) {
        String subject = line.subject().map(EstimateWords::plain).orElse("");
        return switch (line.reason()) {
            case SIGN_OFF -> "the owner signs the test area";
            case CURING -> "after " + subject;
            case DRYING -> "drying before the sealer";
            case SEALER_CURING -> "the sealer cures";
        };
    }

    static String consumable(ConsumableKind kind) {
        return switch (kind) {
            case PAD_WEAR -> "pads, wear of a set";
            case PAD_SETS -> "pads, sets at hand";
            case POWDER -> "powder";
            case WATER -> "water";
            case SLURRY -> "slurry to take away";
            case SOLIDS -> "dry solids in it";
            case ENERGY -> "electricity";
        };
    }

    static String agreement(RouteCheck.Agreement agreement) {
        return switch (agreement) {
            case AGREE -> "both agree";
            case EXPLAINED -> "the difference is explained by";
            case NOT_EXPLAINED -> "they disagree, and this does not explain it:";
            case NO_BAND -> "common practice names no pace for it";
        };
    }

    static String cause(RouteCheck.Cause cause) {
        return switch (cause) {
            case PATH_WIDTH -> "path width";
            case PASSES -> "passes";
            case CUT_RATE -> "cut rate";
        };
    }

    static String remark(Remark remark) {
        return switch (remark) {
            case ENDS_ARE_ADDED ->
                "Low adds all low figures and high all high ones: the true spread is likely narrower. They are ends of"
                        + " practice, no confidence interval.";
            case ABRASION_RESISTANCE_IS_A_PURCHASE_MINIMUM ->
                "How fast this stone is cut follows from the least abrasion resistance that a standard asks of new"
                        + " stone, not from a test of this floor.";
            case EDGES_ARE_NOT_SCALED -> "The rate at the edges is one for all stones and grits.";
            case WALKING_SPEED_IS_CAPPED -> "A fast cut is walked no faster than practice allows.";
            case ROUTES_DISAGREE ->
                "Walking pace and common practice disagree for at least one step: time a bay before you promise.";
            case EVERY_DAY_IS_A_WORKING_DAY -> "One shift a day, and every day is a working day.";
        };
    }

    static String note(JobNote note) {
        return switch (note) {
            case PLAN_IS_PROVISIONAL ->
                "The plan is provisional: nothing is cut until its questions are answered, and answers change the"
                        + " estimate.";
            case EDGES_FROM_AREA ->
                "Nobody measured the edges: theirs is the length around a square of this area, the shortest that a"
                        + " rectangle has. Measure and give it with --edges.";
            case HAND_WORK_BY_AREA -> "The floor is worked by hand throughout; without --edges it goes by its area.";
            case STAIRS_ARE_NOT_IN_THE_EDGES ->
                "Stairs are reckoned as floor; their treads are not in the length of the edges.";
            case NO_EDGE_WORK -> "The plan has no edge work.";
            case STONE_MAY_BE_HARD -> "Nobody tried a scriber, and the stone may be hard: it is reckoned as hard.";
            case REPAIRS_BY_SURVEY -> "Local repairs are as large as the survey says.";
            case REPAIRS_BY_LIMIT ->
                "Nobody measured the places of local repairs: low is none, high the share of the floor from which they"
                        + " would no longer be local.";
            case HAND_WORK_USES_UP_MORE -> "Work by hand alone has hours, but its pads, water and power are left out.";
            case POWDER_AS_USUAL -> "Powder is reckoned with the usual passes and the water of the finest grits.";
            case CREW_IS_SMALLER ->
                "More people are reckoned with than the survey names: with fewer the hours by the clock grow, and wet"
                        + " electric work is not done alone.";
            case CREW_IS_LARGER ->
                "The calendar is that of one machine and its crew; more crews with machines of their own shorten it,"
                        + " not the person-hours.";
            case A_READING_ENDS_A_WAIT -> "The floor dries until a reading says so: that wait is not in the calendar.";
            case WAITS_MAY_OVERLAP -> "Waits follow one another here; some can run side by side.";
            case SEALED_LATER ->
                "The floor opens before a sealer would cure: sealing is a visit of its own and not in here.";
            case OPENS_BEFORE_CURED ->
                "The floor opens again sooner than drying and curing may take: allow for the high figure, or seal"
                        + " later.";
        };
    }
}
