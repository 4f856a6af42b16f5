package merrowhithe;

import java.util.List;
import net.jqwik.api.Example;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.survey.FloorSurvey;
import stoneprocess.rules.Advisor;
import stoneprocess.rules.Options;
import stoneprocess.rules.Rulebase;
import stoneprocess.rules.overlay.Overlay;
import stoneprocess.rules.testkit.RulebaseContract;

/** House rules that save grades, and the law that finds them out. */
class HastyRulesTest {
    private static final Overlay HASTY = Overlay.none()
            .retune("step-ratio.most", new Share(900), "a hasty hand", "fewer grades to carry")
            .retune("step-ratio.aim", new Share(900), "a hasty hand", "fewer grades to carry");
    private static final Advisor ADVISOR = Advisor.of(Rulebase.with(HASTY), Options.defaults());

    @Example
    void steps_that_skip_too_much_break_the_law_of_the_grit_path() {
        RulebaseContract contract = () -> ADVISOR;
        List<FloorSurvey> floors =
                contract.floorSurveys().sampleStream().limit(500).toList();
        for (FloorSurvey floor : floors) {
            try {
                contract.every_answer_keeps_the_laws(floor, 1);
            } catch (AssertionError broken) {
                if (broken.getMessage().startsWith("grit-path-is-legal")) {
                    return;
                }
                throw broken;
            }
        }
        throw new AssertionError("No floor of " + floors.size() + " showed the fault");
    }
}
