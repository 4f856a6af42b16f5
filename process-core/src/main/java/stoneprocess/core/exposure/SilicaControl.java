package stoneprocess.core.exposure;

import java.util.List;
import java.util.Optional;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.quantity.Airflow;
import stoneprocess.core.quantity.Count;
import stoneprocess.core.source.Citation;

/**
 * A task held against Table 1.
 *
 * @param verdict where it stands
 * @param missing what it lacks of the listed control; empty when the table is met
 * @param neededAirflow what a collector has to draw at this tool: by wheel diameter for a hand grinder, the maker's
 *     figure for a floor grinder; empty when that figure is not known
 * @param respirator whether a respirator is worn
 * @param protectionFactor the least assigned protection factor, where the table asks for one
 * @param source the table
 * @param decides who decides
 */
public record SilicaControl(
        SilicaVerdict verdict,
        List<SilicaGap> missing,
        Optional<Airflow> neededAirflow,
        RespiratorNeed respirator,
        Optional<Limit<Count>> protectionFactor,
        Citation source,
        Role decides) {
    public SilicaControl {
        Refuse.nulls(
                SilicaControl.class, verdict, missing, neededAirflow, respirator, protectionFactor, source, decides);
        missing = List.copyOf(missing);
    }
}
