package stoneprocess.core.site;

import stoneprocess.core.gloss.GlossPrediction;
import stoneprocess.core.gloss.OldDamage;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.tool.AbrasiveGrade;

/**
 * What a start would bring by the end of the plan, with the passes planned for each grit from there on. Starts differ by the
 * damage that they leave: a grit is left only when the scratches of the one before are gone.
 *
 * @param grade the first grit
 * @param planned whether the plan starts there
 * @param damage what it takes off
 * @param end the zone after the last grit of the plan
 */
public record GlossStart(AbrasiveGrade grade, boolean planned, OldDamage damage, GlossPrediction end) {
    public GlossStart {
        Refuse.nulls(GlossStart.class, grade, damage, end);
    }
}
