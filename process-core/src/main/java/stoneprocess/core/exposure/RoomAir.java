package stoneprocess.core.exposure;

import stoneprocess.core.internal.check.Refuse;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Airflow;
import stoneprocess.core.quantity.Concentration;
import stoneprocess.core.quantity.Volume;

/**
 * A room and its air.
 *
 * @param volume the empty room, at least 1 m3
 * @param outdoorAir fresh air known to come in; zero when not known
 * @param background carbon monoxide in the air that comes in
 */
public record RoomAir(Volume volume, Airflow outdoorAir, Concentration background) {
    /**
     * Checks the volume.
     *
     * @throws InvalidInputException for less than 1 m3
     */
    public RoomAir {
        Refuse.nulls(RoomAir.class, volume, outdoorAir, background);
        if (volume.litres() < 1000) {
            throw new InvalidInputException("room.volume", volume.print(), "1000 l or more");
        }
    }
}
