package measuredwalk.clinic.pages;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;

import measuredwalk.clinic.access.Recorded;
import measuredwalk.clinic.caseload.Caseload;
import measuredwalk.clinic.caseload.DogStanding;
import measuredwalk.household.Dog;
import measuredwalk.household.Households;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** All dogs by name. */
@Controller
class DogsPage {

	private static final int MOST_SHOWN = 100;

	private final Households households;

	private final Caseload caseload;

	DogsPage(Households households, Caseload caseload) {
		this.households = households;
		this.caseload = caseload;
	}

	@GetMapping("/clinic/dogs")
	@Recorded("saw the list of dogs")
	String dogs(@RequestParam(defaultValue = "") String name, Model model) {
		List<Dog> found = named(this.households.dogs(), name);
		Map<UUID, DogStanding> standings = this.caseload.all()
			.stream()
			.collect(Collectors.toMap(DogStanding::dogId, Function.identity()));
		model.addAttribute("name", name);
		model.addAttribute("found", found(found.size()));
		model.addAttribute("dogs",
				found.stream().limit(MOST_SHOWN).map((dog) -> DogLine.of(dog, standings.get(dog.id()))).toList());
		return "clinic/dogs";
	}

	static List<Dog> named(List<Dog> dogs, String beginning) {
		String wanted = beginning.strip().toLowerCase(Locale.ROOT);
		return dogs.stream().filter((dog) -> dog.name().toLowerCase(Locale.ROOT).startsWith(wanted)).toList();
	}

	static String found(int dogs) {
		String count = (dogs == 1) ? "1 dog" : dogs + " dogs";
		return (dogs <= MOST_SHOWN) ? count + "." : count + ", the first " + MOST_SHOWN + " are shown.";
	}

}
