package stoneprocess.core.exposure;

import stoneprocess.core.quantity.Angle;
import stoneprocess.core.quantity.Count;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Mass;
import stoneprocess.core.quantity.TimeSpan;
import stoneprocess.core.quantity.Unit;

/** Lifts in plain numbers for the tests: kilograms, centimetres, degrees, lifts a minute, hours. */
record Lifts(
        double mass,
        double reach,
        double height,
        double travel,
        double turn,
        double often,
        double hours,
        Coupling coupling) {
    /** The best lift there is: 23 kg close by at knuckle height, once in five minutes, held well. */
    static final Lifts BEST = new Lifts(23, 25, 75, 25, 0, 0.2, 1, Coupling.GOOD);

    Lift lift() {
        return new Lift(
                new Mass(mass),
                Length.of(reach, Unit.CENTIMETRE),
                Length.of(height, Unit.CENTIMETRE),
                Length.of(travel, Unit.CENTIMETRE),
                new Angle(turn),
                new Count(Math.ceil(often * 30)),
                new TimeSpan(30),
                TimeSpan.of(hours, Unit.HOUR),
                coupling);
    }

    Lifts mass(double kilograms) {
        return new Lifts(kilograms, reach, height, travel, turn, often, hours, coupling);
    }

    Lifts reach(double centimetres) {
        return new Lifts(mass, centimetres, height, travel, turn, often, hours, coupling);
    }

    Lifts height(double centimetres) {
        return new Lifts(mass, reach, centimetres, travel, turn, often, hours, coupling);
    }

    Lifts travel(double centimetres) {
        return new Lifts(mass, reach, height, centimetres, turn, often, hours, coupling);
    }

    Lifts turn(double degrees) {
        return new Lifts(mass, reach, height, travel, degrees, often, hours, coupling);
    }

    Lifts often(double liftsPerMinute) {
        return new Lifts(mass, reach, height, travel, turn, liftsPerMinute, hours, coupling);
    }

    Lifts hours(double duration) {
        return new Lifts(mass, reach, height, travel, turn, often, duration, coupling);
    }

    Lifts coupling(Coupling hold) {
        return new Lifts(mass, reach, height, travel, turn, often, hours, hold);
    }
}
