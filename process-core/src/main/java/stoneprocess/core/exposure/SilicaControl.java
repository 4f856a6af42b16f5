package stoneprocess.core.exposure;

import java.util.List;
import java.util.Optional;
import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.quantity.Airflow;
import stoneprocess.core.quantity.Count;
import stoneprocess.core.source.Citation;

/**
 * A task compared with Table 1.
 *
 * @param verdict whether it meets the table
 * @param missing what the task lacks of the listed control; empty when the table is met
 * @param neededAirflow what a collector has to draw at this tool: by wheel diameter for a hand grinder, the maker's
 *     figure for a floor grinder; empty when that figure is not known
 * @param respirator whether a respirator has to be worn
 * @param protectionFactor the lowest assigned protection factor, where the table requires one
 * @param source the table
 * @param decides the role that decides
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
