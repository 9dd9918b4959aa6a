package measuredwalk.clinic.pages;

import java.util.List;

/**
 * A kind of medicine to tick; public for the templates only.
 *
 * @param code the kind as it stands in data
 * @param words the kind in words of the trade
 */
public record MedicineKind(String code, String words) {

	/** The kinds that any rule or reading asks about. */
	static final List<MedicineKind> TO_TICK = List.of(new MedicineKind("nsaid", "anti-inflammatory (NSAID)"),
			new MedicineKind("anti-ngf", "anti-NGF injection"), new MedicineKind("gabapentinoid", "gabapentinoid"),
			new MedicineKind("other-pain-relief", "other pain relief"));

}
