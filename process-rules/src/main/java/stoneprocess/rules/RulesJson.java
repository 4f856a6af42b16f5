package stoneprocess.rules;

import java.util.List;
import stoneprocess.core.json.Form;
import stoneprocess.rules.overlay.Overlay;

/** The JSON forms of a rulebase; those of surveys and answers stand in {@link stoneprocess.core.json.Json}. */
public final class RulesJson {
    /** The rules of a house: what is switched off and retuned, by whom and why. */
    public static final Form<Overlay> OVERLAY = Form.of(
            "overlay",
            Overlay.class,
            "What a house switches off and retunes in the shipped rulebase, who says so and why.");

    /** What every rule reads and says, with its card. */
    public static final Form<RuleSheets> RULES =
            Form.of("rules", RuleSheets.class, "What every rule of a rulebase reads and says, with its card.");

    private RulesJson() {}

    /** All forms of this room. */
    public static List<Form<?>> all() {
        return List.of(OVERLAY, RULES);
    }
}
