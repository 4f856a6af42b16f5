package stoneprocess.rules.space;

import stoneprocess.core.stone.AcidReaction;
import stoneprocess.core.stone.Hardness;
import stoneprocess.core.survey.AcidDrop;
import stoneprocess.core.survey.ScriberTest;

/** What the tests of a stone show. */
final class StoneTests {
    private StoneTests() {}

    static AcidDrop acidDrop(AcidReaction reaction) {
        return switch (reaction) {
            case NONE -> AcidDrop.NO_REACTION;
            case SLOW -> AcidDrop.FIZZ_ON_POWDER;
            case STRONG -> AcidDrop.FIZZ_ON_SOLID;
        };
    }

    static ScriberTest scriber(Hardness hardness) {
        return hardness == Hardness.HARD ? ScriberTest.NOT_SCRATCHED : ScriberTest.SCRATCHED;
    }
}
