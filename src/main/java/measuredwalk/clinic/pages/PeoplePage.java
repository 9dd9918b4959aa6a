package measuredwalk.clinic.pages;

import java.security.Principal;
import java.time.ZoneOffset;
import java.util.List;

import jakarta.servlet.http.HttpServletRequest;
import measuredwalk.clinic.access.AccessRecord;
import measuredwalk.clinic.access.Recorded;
import measuredwalk.clinic.access.StaffAccounts;
import measuredwalk.clinic.access.StaffRole;
import measuredwalk.escalation.StaffChats;
import measuredwalk.household.Dog;
import measuredwalk.household.Households;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Who is behind the chats: people at home, staff chats, staff accounts. */
@Controller
class PeoplePage {

	private static final int MOST_SHOWN = 100;

	private static final String HERE = "redirect:/clinic/people";

	private final Households households;

	private final StaffChats staffChats;

	private final StaffAccounts accounts;

	private final AccessRecord record;

	PeoplePage(Households households, StaffChats staffChats, StaffAccounts accounts, AccessRecord record) {
		this.households = households;
		this.staffChats = staffChats;
		this.accounts = accounts;
		this.record = record;
	}

	@GetMapping("/clinic/people")
	@Recorded("saw people and codes")
	String people(@RequestParam(defaultValue = "") String name, HttpServletRequest request, Model model) {
		List<Dog> found = DogsPage.named(this.households.dogs(), name);
		model.addAttribute("name", name);
		model.addAttribute("found", DogsPage.found(found.size()));
		model.addAttribute("homes",
				found.stream()
					.limit(MOST_SHOWN)
					.map((dog) -> HomeLine.of(dog, this.households.carersOf(dog.household().id())))
					.toList());
		model.addAttribute("chats",
				this.staffChats.all()
					.stream()
					.map((chat) -> new ChatLine(chat.chatId(),
							chat.channel() + ", since " + Wording.moment(chat.joinedAt(), ZoneOffset.UTC)))
					.toList());
		model.addAttribute("accounts", request.isUserInRole(StaffRole.ADMIN.name()) ? this.accounts.all() : null);
		return "clinic/people";
	}

	@PostMapping("/clinic/alert-codes")
	String alertCode(Principal staff, RedirectAttributes next) {
		next.addFlashAttribute("alertCode", this.staffChats.makeCode(staff.getName()));
		this.record.add(staff.getName(), "made a code for a staff chat", "");
		return HERE;
	}

	@PostMapping("/clinic/staff-chats/{id}/stop")
	String stop(@PathVariable long id, Principal staff, RedirectAttributes next) {
		this.staffChats.stop(id);
		this.record.add(staff.getName(), "stopped alerts to a staff chat", String.valueOf(id));
		next.addFlashAttribute("done", "That chat gets no more alerts.");
		return HERE;
	}

	@PostMapping("/clinic/accounts")
	String add(@RequestParam String username, @RequestParam String password, @RequestParam StaffRole role,
			Principal staff, RedirectAttributes next) {
		try {
			this.accounts.add(username.strip(), password, role);
			this.record.add(staff.getName(), "made an account", username.strip());
			next.addFlashAttribute("done", "The account is made.");
		}
		catch (IllegalArgumentException ex) {
			next.addFlashAttribute("problem", ex.getMessage());
		}
		return HERE;
	}

	@PostMapping("/clinic/accounts/active")
	String setActive(@RequestParam String username, @RequestParam boolean active, Principal staff,
			RedirectAttributes next) {
		try {
			this.accounts.setActive(username, active);
			this.record.add(staff.getName(), active ? "switched on an account" : "switched off an account", username);
			next.addFlashAttribute("done", username + (active ? " may log in again." : " may not log in any more."));
		}
		catch (IllegalArgumentException ex) {
			next.addFlashAttribute("problem", ex.getMessage());
		}
		return HERE;
	}

}
