package stoneprocess.rules.internal.run;

import java.util.List;
import stoneprocess.core.topic.Stage;

/**
 * The programs and their stages. Following up and diagnosing read the job log and end with the next move; the stages
 * from the sequence to safety are then planned again with what was already done pinned.
 */
public enum Program {
    RECOMMEND(
            Stage.SURVEY,
            Stage.GO_NO_GO,
            Stage.FIRST_CUT,
            Stage.SEQUENCE,
            Stage.EQUIPMENT,
            Stage.WATER_AND_PASSES,
            Stage.FINISHING,
            Stage.SAFETY),
    FOLLOW_UP(Stage.SURVEY, Stage.GO_NO_GO, Stage.FIRST_CUT, Stage.REVIEW, Stage.SIGNS, Stage.NEXT),
    DIAGNOSE(Stage.SURVEY, Stage.GO_NO_GO, Stage.FIRST_CUT, Stage.SIGNS, Stage.NEXT);

    private final List<Stage> stages;

    Program(Stage... stages) {
        this.stages = List.of(stages);
    }

    public List<Stage> stages() {
        return stages;
    }
}
