package stoneprocess.core.exposure;

/** One thing to be held against its limit: what the sheets about exposure are made from. */
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
