package stoneprocess.examples.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import stoneprocess.core.problem.InvalidInputException;

/** Every door on what it understands, on what a fuzzer once found, and on the same bytes shaken a little. */
class HostileInputTest {
    private static final int SHAKEN = Boolean.getBoolean("audit.whole") ? 2_000 : 20;

    @ParameterizedTest
    @EnumSource
    void a_door_lets_in_or_refuses_by_name(HostileInput door) {
        Random random = new Random(door.ordinal());
        int letIn = 0;
        for (byte[] seed : Seeds.of(door)) {
            letIn += entered(door, seed);
            for (int i = 0; i < SHAKEN; i++) {
                entered(door, shaken(seed, random));
            }
        }
        assertThat(letIn).as("seeds that came in").isPositive();
    }

    private static int entered(HostileInput door, byte[] bytes) {
        try {
            door.enter(bytes);
            return 1;
        } catch (InvalidInputException refused) {
            assertThat(refused.field()).isNotEmpty();
            assertThat(refused.getMessage()).contains("accepted: ").doesNotContain("\n");
            return 0;
        }
    }

    private static byte[] shaken(byte[] bytes, Random random) {
        byte[] changed = Arrays.copyOf(bytes, bytes.length);
        for (int i = 0; i < 1 + random.nextInt(3); i++) {
            changed[random.nextInt(changed.length)] =
                    (byte) (random.nextBoolean() ? '0' + random.nextInt(10) : random.nextInt(256));
        }
        return changed;
    }
}
