package measuredwalk.tolerance;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;

import measuredwalk.signs.LoadKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

/** What a clinic may change of the dosing rule. */
class DosingSettingsTests {

	private static final LocalDate FIRST = LocalDate.of(2026, 1, 5);

	@ParameterizedTest
	@EnumSource(DosingSetting.class)
	void everySettingHasADefaultInItsRangeAUnitAndASource(DosingSetting setting) {
		assertThat(setting.standard()).isBetween(setting.least(), setting.most());
		assertThat(setting.unit()).isNotBlank();
		assertThat(setting.basis().source()).isNotBlank();
	}

	@ParameterizedTest
	@EnumSource(DosingSetting.class)
	void aValueOutOfRangeIsRefusedWithTheRangeAllowed(DosingSetting setting) {
		DosingSettings standard = DosingSettings.standard();
		assertThatThrownBy(() -> standard.with(setting, setting.most() + 1))
			.isInstanceOf(IllegalArgumentException.class)
			.hasMessageContaining(setting.code())
			.hasMessageContaining(String.valueOf(setting.most()));
		assertThatThrownBy(() -> standard.with(setting, Double.NaN)).isInstanceOf(IllegalArgumentException.class);
	}

	@ParameterizedTest
	@EnumSource(DosingSetting.class)
	void theEndsOfItsRangeAreAllowedAndGiveASuggestion(DosingSetting setting) {
		for (double end : new double[] { setting.least(), setting.most() }) {
			assertThat(setting.allows(end)).isTrue();
			ToleranceModel model = new ToleranceModel(DosingSettings.standard().with(setting, end));
			assertThat(model.suggest(history(), FIRST.plusDays(2)).minutes()).isPositive();
		}
	}

	@Test
	void halfADayIsRefused() {
		assertThatThrownBy(() -> DosingSettings.standard().with(DosingSetting.REST_DAYS, 1.5))
			.isInstanceOf(IllegalArgumentException.class)
			.hasMessageContaining("whole");
	}

	@Test
	void onlyWhatTheClinicHasSetIsKept() {
		DosingSettings chosen = DosingSettings.standard().with(DosingSetting.CEILING, 2);
		assertThat(chosen.changed()).containsOnlyKeys(DosingSetting.CEILING);
		assertThat(chosen.value(DosingSetting.CEILING)).isEqualTo(2);
		assertThat(chosen.value(DosingSetting.GROWTH)).isEqualTo(1.15);
		assertThat(DosingSettings.standard().changed()).isEmpty();
	}

	@Test
	void defaultsAreThoseOfTheModel() {
		assertThat(ToleranceSettings.of(DosingSettings.standard()).limits())
			.isEqualTo(new LimitSettings(2, 0.6, 1.15, 1.15, 7, 14, 3, 14, 1.5, 2, 1.30, 1.5, 5, 12, 0.4, 1, 0.05, 84));
		assertThat(ToleranceSettings.of(DosingSettings.standard()).dosing())
			.isEqualTo(new DoseSettings(0.22, 0.18, 30));
		assertThat(LoadFactors.of(DosingSettings.standard()))
			.isEqualTo(new LoadFactors(1.3, 1.2, 1.2, 1.15, 1.4, 1.15));
	}

	@Test
	void aMoreCarefulClinicGetsShorterWalks() {
		DosingSettings careful = DosingSettings.standard()
			.with(DosingSetting.TROUBLE, 0.10)
			.with(DosingSetting.TROUBLE_WHEN_NEW, 0.10);
		assertThat(first(new ToleranceModel(careful)).minutes()).isLessThan(first(new ToleranceModel()).minutes());
	}

	@Test
	void careWithANewDogIsToldWhenItMakesTheWalkShorter() {
		DosingSettings settled = DosingSettings.standard().with(DosingSetting.TROUBLE_WHEN_NEW, 0.22);
		DosingSettings careful = DosingSettings.standard().with(DosingSetting.TROUBLE_WHEN_NEW, 0.05);
		assertThat(first(new ToleranceModel(careful)).minutes())
			.isLessThan(first(new ToleranceModel(settled)).minutes());
		assertThat(first(new ToleranceModel(careful)).reasons()).contains(Reason.CAREFUL_WITH_A_NEW_DOG);
		assertThat(first(new ToleranceModel(settled)).reasons()).doesNotContain(Reason.CAREFUL_WITH_A_NEW_DOG);
		assertThat(new ToleranceModel(careful).suggest(history(), FIRST.plusDays(31)).reasons())
			.doesNotContain(Reason.CAREFUL_WITH_A_NEW_DOG);
	}

	@Test
	void aClinicsLoadFactorsMakeTheLoadOfAWalk() {
		DosingSettings chosen = DosingSettings.standard().with(DosingSetting.HILLS, 2);
		assertThat(LoadFactors.of(chosen).load(Set.of(LoadKind.HILLS)).factor()).isEqualTo(2);
		assertThat(LoadFactors.of(chosen).load(Set.of())).isEqualTo(Load.USUAL);
	}

	private static Suggestion first(ToleranceModel model) {
		return model.suggest(history(), FIRST);
	}

	private static List<ToleranceEvent> history() {
		return List.of(new ToleranceEvent.DogEnrolled(FIRST, new WalkPlan(20, 2, 6, 60), null, null, true, null));
	}

}
