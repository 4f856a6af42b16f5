package stoneprocess.core.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import stoneprocess.core.parameter.Parameters;
import stoneprocess.core.problem.InvalidInputException;
import stoneprocess.core.quantity.Length;
import stoneprocess.core.quantity.Share;
import stoneprocess.core.term.Term;

class DamageTest {
    private static final Parameters STANDARD = Parameters.standard();
    private static final Set<DamageKind> MEASURED =
            EnumSet.of(DamageKind.SCRATCHES, DamageKind.LIPPAGE, DamageKind.WAVINESS);

    private static Damage damage(DamageKind kind, Term look, double millimetres) {
        return new Damage(kind, Optional.of(look), Optional.of(new Length(millimetres)), Optional.empty());
    }

    @ParameterizedTest
    @EnumSource(DamageKind.class)
    void neither_look_nor_depth_is_refused(DamageKind kind) {
        assertThatThrownBy(() -> new Damage(kind, Optional.empty(), Optional.empty(), Optional.of(new Share(5))))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith(kind.key()
                        + (MEASURED.contains(kind) ? ": neither a look nor a depth is told" : ": no look is told"))
                .hasMessageContaining(String.join(", ", Term.keys(kind.terms())));
    }

    @ParameterizedTest
    @EnumSource(DamageKind.class)
    void a_look_of_another_kind_is_refused_with_the_looks_of_this_kind(DamageKind kind) {
        Term other = kind == DamageKind.WAVINESS ? LippageClass.HIGH : WavinessClass.WAVY;
        assertThatThrownBy(() -> Damage.seen(kind, other, new Share(5)))
                .isInstanceOf(InvalidInputException.class)
                .hasMessage(kind.key() + ".look: '" + other.key() + "' is not accepted; accepted: one of "
                        + String.join(", ", Term.keys(kind.terms())));
    }

    @ParameterizedTest
    @EnumSource(DamageKind.class)
    void only_scratches_lippage_and_waviness_are_measured(DamageKind kind) {
        assertThat(kind.depthScale().isPresent()).isEqualTo(MEASURED.contains(kind));
        if (MEASURED.contains(kind)) {
            assertThat(Damage.measured(kind, new Length(1), new Share(5)).depth())
                    .contains(new Length(1));
        } else {
            assertThatThrownBy(() -> Damage.measured(kind, new Length(1), new Share(5)))
                    .isInstanceOf(InvalidInputException.class)
                    .hasMessageStartingWith(kind.key() + ".depth: '1 mm' is not accepted");
        }
    }

    @Test
    void a_depth_over_100_mm_is_refused() {
        assertThat(Damage.measured(DamageKind.WAVINESS, new Length(100), new Share(5))
                        .severity(STANDARD))
                .isEqualTo(WavinessClass.WAVY.ordinal());
        assertThatThrownBy(() -> Damage.measured(DamageKind.WAVINESS, new Length(100.0001), new Share(5)))
                .isInstanceOf(InvalidInputException.class)
                .hasMessage("waviness.depth: '100.0001 mm' is not accepted; accepted: a depth from 0 to 100 mm");
    }

    @ParameterizedTest
    @EnumSource(
            value = ScratchClass.class,
            names = {"NONE", "SEEN"})
    void a_scratch_that_is_not_felt_has_no_depth(ScratchClass look) {
        assertThat(damage(DamageKind.SCRATCHES, look, 0).severity(STANDARD)).isEqualTo(look.ordinal());
        assertThatThrownBy(() -> damage(DamageKind.SCRATCHES, look, 0.0001))
                .isInstanceOf(InvalidInputException.class)
                .hasMessageStartingWith("scratches.depth: '0.0001 mm' is not accepted; accepted: no depth where");
    }

    @Test
    void what_is_accepted_of_new_work_has_a_height_all_the_same() {
        assertThat(damage(DamageKind.LIPPAGE, LippageClass.NONE, 0.5).severity(STANDARD))
                .isEqualTo(LippageClass.NONE.ordinal());
        assertThat(damage(DamageKind.WAVINESS, WavinessClass.FLAT, 2).severity(STANDARD))
                .isEqualTo(WavinessClass.FLAT.ordinal());
        assertThat(damage(DamageKind.LIPPAGE, LippageClass.NONE, 3).severity(STANDARD))
                .isEqualTo(LippageClass.HIGH.ordinal());
    }

    @ParameterizedTest
    @EnumSource(DamageKind.class)
    void what_is_not_there_has_no_share(DamageKind kind) {
        assertThat(Damage.seen(kind, kind.none(), new Share(0)).severity(STANDARD))
                .isZero();
        assertThatThrownBy(() -> Damage.seen(kind, kind.none(), new Share(0.0001)))
                .isInstanceOf(InvalidInputException.class)
                .hasMessage(
                        kind.key() + ".share: '0.0001 %' is not accepted; accepted: no share where the look is none");
    }

    @ParameterizedTest
    @EnumSource(DamageKind.class)
    void a_share_over_100_percent_is_refused(DamageKind kind) {
        Term worst = kind.terms().get(kind.terms().size() - 1);
        assertThat(Damage.seen(kind, worst, new Share(100)).share()).contains(new Share(100));
        assertThatThrownBy(() -> Damage.seen(kind, worst, new Share(100.0001)))
                .isInstanceOf(InvalidInputException.class)
                .hasMessage(kind.key() + ".share: '100.0001 %' is not accepted; accepted: a share from 0 to 100 %");
    }

    @ParameterizedTest
    @EnumSource(DamageKind.class)
    void each_look_is_as_bad_as_its_place_among_the_looks(DamageKind kind) {
        List<Term> looks = kind.terms();
        assertThat(looks).hasSizeGreaterThan(1).startsWith(kind.none());
        for (int i = 0; i < looks.size(); i++) {
            Damage damage = new Damage(kind, Optional.of(looks.get(i)), Optional.empty(), Optional.empty());
            assertThat(damage.severity(STANDARD)).isEqualTo(i);
        }
    }

    @ParameterizedTest
    @CsvSource({"0, FLAT", "2.9999, FLAT", "3, WAVY", "100, WAVY"})
    void waviness_is_classed_by_its_depth(double millimetres, WavinessClass expected) {
        assertThat(Damage.measured(DamageKind.WAVINESS, new Length(millimetres), new Share(50))
                        .severity(STANDARD))
                .isEqualTo(expected.ordinal());
    }

    @ParameterizedTest
    @CsvSource({
        "FELT_BY_NAIL, 0, FELT_BY_NAIL",
        "FELT_BY_NAIL, 0.0999, FELT_BY_NAIL",
        "FELT_BY_NAIL, 0.1, FELT_BY_COIN",
        "DEEP, 0.1, DEEP",
        "DEEP, 0.8, GOUGED",
        "GOUGED, 0.1, GOUGED",
    })
    void the_worse_of_look_and_depth_counts(ScratchClass look, double millimetres, ScratchClass expected) {
        assertThat(damage(DamageKind.SCRATCHES, look, millimetres).severity(STANDARD))
                .isEqualTo(expected.ordinal());
    }

    @Test
    void a_retuned_limit_moves_the_severity() {
        Damage damage = Damage.measured(DamageKind.LIPPAGE, new Length(1), new Share(5));
        assertThat(damage.severity(STANDARD)).isEqualTo(LippageClass.SLIGHT.ordinal());
        assertThat(damage.severity(STANDARD.with("lippage.slight", new Length(1.2))))
                .isEqualTo(LippageClass.NONE.ordinal());
    }

    @Test
    void a_share_is_of_the_area_but_of_the_joints_for_lippage() {
        assertThat(EnumSet.allOf(DamageKind.class))
                .filteredOn(kind -> kind.shareOf().equals(DamageKind.JOINTS))
                .containsExactly(DamageKind.LIPPAGE);
        assertThat(EnumSet.complementOf(EnumSet.of(DamageKind.LIPPAGE)))
                .allSatisfy(kind -> assertThat(kind.shareOf()).isEqualTo(DamageKind.AREA));
    }
}
