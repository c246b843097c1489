package org.mantice.layer.bellows;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.mantice.rule.TurnPlace;
import org.mantice.rule.TurnPlace.Mark;
import org.mantice.rule.TurnPlace.Pickup;
import org.mantice.rule.TurnPlace.Strength;
import org.mantice.tune.MusicalTime;
import org.mantice.tune.Tunes;

class TurnCandidatesTest {
    private static Scene scene(String meter, String melody, int times) {
        return Scene.of(Tunes.melody(meter, melody), 120, times);
    }

    private static TurnPlace at(Scene scene, int playedMeasure, MusicalTime offset) {
        return scene.ground().places.stream()
                .filter(place -> place.measure() == playedMeasure
                        && place.place().offset().equals(offset))
                .findFirst()
                .orElseThrow()
                .facts();
    }

    private static boolean isPlace(Scene scene, int playedMeasure, MusicalTime offset) {
        return scene.ground().places.stream()
                .anyMatch(place -> place.measure() == playedMeasure
                        && place.place().offset().equals(offset));
    }

    @Test
    void turnsAreJustBeforeNotesAndInRestsOnTheBeat() {
        Scene scene = scene("4/4", "C4 h, D4 q., E4 e | F4 q, R h, G4 q | C4 w", 1);

        assertThat(isPlace(scene, 0, MusicalTime.of(1, 4))).isFalse();
        assertThat(at(scene, 0, MusicalTime.of(1, 2)).strength()).isEqualTo(Strength.STRONG_BEAT);
        assertThat(at(scene, 0, MusicalTime.of(7, 8)).strength()).isEqualTo(Strength.OFF_BEAT);
        assertThat(at(scene, 1, MusicalTime.ZERO).strength()).isEqualTo(Strength.BARLINE);
        assertThat(at(scene, 1, MusicalTime.of(1, 4)).restMillis()).isEqualTo(1_000);
        assertThat(at(scene, 1, MusicalTime.of(1, 2)).turnsInRest()).isTrue();
        assertThat(at(scene, 1, MusicalTime.of(3, 4)).turnsInRest()).isTrue();
    }

    @Test
    void noteTiedOverTheBarlineHasNoPlaceThere() {
        assertThat(isPlace(scene("4/4", "C4 h, D4~ h | ~D4 h, E4 h", 1), 1, MusicalTime.ZERO))
                .isFalse();
    }

    @Test
    void graceNotesBelongToWhatFollows() {
        Scene scene = scene("4/4", "C4 h, {E4;F4} D4 h | C4 w", 1);

        assertThat(scene.ground().places.stream()
                        .filter(place -> place.place().offset().equals(MusicalTime.of(1, 2))))
                .hasSize(1);
    }

    @Test
    void signsOfTheMusicAreSeen() {
        Scene scene = scene("4/4", "C4 h ( , D4 h ) | D4 h stacc, E4 h breath | F4 w @end | G4 w", 1);

        assertThat(at(scene, 0, MusicalTime.of(1, 2)).slurred()).isTrue();
        assertThat(at(scene, 1, MusicalTime.ZERO).slurred()).isFalse();
        assertThat(at(scene, 1, MusicalTime.ZERO).endsSlur()).isTrue();
        assertThat(at(scene, 1, MusicalTime.ZERO).repeatedNote()).isTrue();
        assertThat(at(scene, 1, MusicalTime.of(1, 2)).detached()).isTrue();
        assertThat(at(scene, 2, MusicalTime.ZERO).mark()).isEqualTo(Mark.BREATH);
        assertThat(at(scene, 6, MusicalTime.ZERO).mark()).isEqualTo(Mark.SECTION);
    }

    @Test
    void pickupIsBeforeTheNextTimeThroughAndItsBarlineIsAfter() {
        Scene scene = scene("3/4", "@pickup G4 q | C4 h. | D4 h | @double C4 h.", 2);
        int secondPickup = 4;

        assertThat(at(scene, 1, MusicalTime.ZERO).pickup()).isEqualTo(Pickup.AFTER);
        assertThat(at(scene, secondPickup, MusicalTime.ZERO).pickup()).isEqualTo(Pickup.BEFORE);
        assertThat(at(scene, secondPickup, MusicalTime.ZERO).mark()).isEqualTo(Mark.PASS);
        assertThat(at(scene, secondPickup + 1, MusicalTime.ZERO).pickup()).isEqualTo(Pickup.AFTER);
    }

    @Test
    void pickupInsideAPhraseIsKnownByTheLongNoteBeforeIt() {
        Scene scene = scene("3/4", "@pickup G4 q | C4 h. | D4 h, E4 q | F4 h. | C4 q, D4 q, E4 q | C4 h.", 1);

        assertThat(at(scene, 2, MusicalTime.of(1, 2)).pickup()).isEqualTo(Pickup.BEFORE);
        assertThat(at(scene, 3, MusicalTime.ZERO).pickup()).isEqualTo(Pickup.AFTER);
        assertThat(at(scene, 4, MusicalTime.of(1, 2)).pickup()).isEqualTo(Pickup.NONE);
        assertThat(at(scene, 5, MusicalTime.ZERO).pickup()).isEqualTo(Pickup.NONE);
    }

    @Test
    void strokesFromPickupToPickupAreWholeMeasures() {
        Scene scene = scene("3/4", "@pickup G4 q | C4 h. | D4 h, E4 q | F4 h. | C4 h, D4 q | C4 h.", 1);
        Ground ground = scene.ground();
        int second = ground.places.stream()
                        .map(place -> place.facts().pickup())
                        .toList()
                        .subList(1, ground.last())
                        .indexOf(Pickup.BEFORE)
                + 1;

        assertThat(ground.stroke(0, second).wholeMeasures()).isEqualTo(2);
    }

    @Test
    void longRestIsCutAtBarlines() {
        Scene scene = scene("4/4", "C4 w | R w | R w | R w | C4 w", 1);

        assertThat(isPlace(scene, 2, MusicalTime.ZERO)).isTrue();
        assertThat(isPlace(scene, 2, MusicalTime.of(1, 4))).isFalse();
    }
}
