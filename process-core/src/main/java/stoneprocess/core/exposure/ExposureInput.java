package stoneprocess.core.exposure;

/** One exposure to be compared with its limit. The exposure sheets are made from these. */
public sealed interface ExposureInput
        permits NoiseDay,
                RunningEngine,
                SilicaTask,
                PendulumReading,
                FrictionReading,
                RoughnessReading,
                RampReading,
                SlurrySample,
                Lift,
                CircuitUse {}
