package stoneprocess.core.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.EnumMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Share;

class ZoneTest {
    @Test
    void a_kind_of_damage_that_is_not_listed_is_unknown_and_none_is_known() {
        Zone zone = new Zone(
                "lane",
                ZoneKind.LANE,
                new Share(20),
                Map.of(DamageKind.RUST_STAINS, Damage.none(DamageKind.RUST_STAINS)));
        assertThat(zone.damage(DamageKind.SALTS).isKnown()).isFalse();
        assertThat(zone.damage(DamageKind.SALTS).value()).isEmpty();
        assertThat(zone.damage(DamageKind.RUST_STAINS).value()).contains(Damage.none(DamageKind.RUST_STAINS));
        assertThat(zone.damage(DamageKind.SALTS)).isNotEqualTo(zone.damage(DamageKind.RUST_STAINS));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.00001, 100.0001})
    void a_share_that_no_part_of_a_floor_can_have_is_refused(double percent) {
        assertThatThrownBy(() -> new Zone("lane", ZoneKind.LANE, new Share(percent), Map.of()))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("share: '" + new Share(percent).print() + "' is not accepted");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.0001, 100})
    void the_smallest_and_the_whole_share_are_accepted(double percent) {
        assertThat(new Zone("lane", ZoneKind.LANE, new Share(percent), Map.of()).share())
                .isEqualTo(new Share(percent));
    }

    @Test
    void a_name_has_1_to_60_characters() {
        assertThat(new Zone("x".repeat(60), ZoneKind.LANE, new Share(1), Map.of()).name())
                .hasSize(60);
        for (String name : new String[] {"", "  ", "x".repeat(61)}) {
            assertThatThrownBy(() -> new Zone(name, ZoneKind.LANE, new Share(1), Map.of()))
                    .isInstanceOf(InvalidInputException.class)
                    .hasMessageStartingWith("name: ")
                    .hasMessageEndingWith(
                            "a name of 1 to 60 characters on one line, without control or invisible characters");
        }
    }

    @Test
    void damage_under_the_key_of_another_kind_is_refused() {
        Map<DamageKind, Damage> mixed = Map.of(DamageKind.SALTS, Damage.none(DamageKind.WEAR));
        assertThatThrownBy(() -> new Zone("lane", ZoneKind.LANE, new Share(1), mixed))
                .isInstanceOf(InvalidInputException.class)
                .hasMessage("damages.salts: 'wear' is not accepted; accepted: its own kind");
    }

    @Test
    void damages_are_copied_in_the_order_of_their_kinds() {
        Map<DamageKind, Damage> damages = new EnumMap<>(DamageKind.class);
        damages.put(DamageKind.SALTS, Damage.none(DamageKind.SALTS));
        damages.put(DamageKind.WEAR, Damage.none(DamageKind.WEAR));
        Zone zone = new Zone("lane", ZoneKind.LANE, new Share(1), damages);
        damages.clear();
        assertThat(zone.damages().keySet()).containsExactly(DamageKind.WEAR, DamageKind.SALTS);
        assertThatThrownBy(() -> zone.damages().clear()).isInstanceOf(UnsupportedOperationException.class);
    }
}
