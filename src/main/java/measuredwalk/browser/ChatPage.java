package measuredwalk.browser;

import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.UUID;

import measuredwalk.clock.Rehearsal;
import measuredwalk.household.Carer;
import measuredwalk.household.Dog;
import measuredwalk.household.Household;
import measuredwalk.household.Households;
import measuredwalk.messaging.Chat;
import measuredwalk.messaging.Chats;
import measuredwalk.messaging.Inbox;
import measuredwalk.messaging.Outbox;
import measuredwalk.messaging.Post;
import org.springframework.boot.autoconfigure.condition.ConditionalOnBooleanProperty;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestHeader;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.View;
import org.springframework.web.servlet.view.RedirectView;

/** The chat page, server-rendered; with a little script it need not reload. */
@Controller
@ConditionalOnBooleanProperty("measuredwalk.rehearsal")
class ChatPage {

	private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("EEEE d MMMM, HH:mm", Locale.UK);

	private static final LocalTime EVENING = LocalTime.of(20, 0);

	/** A minute after the morning check-in's usual hour. */
	private static final LocalTime MORNING = LocalTime.of(7, 31);

	private static final String LOG = "chat :: log";

	private final Chats chats;

	private final Inbox inbox;

	private final Outbox outbox;

	private final Post post;

	private final Households households;

	private final Rehearsal rehearsal;

	ChatPage(Chats chats, Inbox inbox, Outbox outbox, Post post, Households households, Rehearsal rehearsal) {
		this.chats = chats;
		this.inbox = inbox;
		this.outbox = outbox;
		this.post = post;
		this.households = households;
		this.rehearsal = rehearsal;
	}

	@GetMapping("/")
	String page(@RequestParam(defaultValue = "wren") String as, Model model) {
		this.post.deliverNow(chat(RehearsalPerson.at(as)).id());
		fill(model, RehearsalPerson.at(as));
		return "chat";
	}

	/** Gives the log when it has more lines than the page has seen, otherwise nothing. */
	@GetMapping("/chat/log")
	Object log(@RequestParam String as, @RequestParam int seen, Model model) {
		int lines = fill(model, RehearsalPerson.at(as));
		return (lines == seen) ? ResponseEntity.noContent().build() : LOG;
	}

	@PostMapping("/chat/message")
	Object message(@RequestParam String as, @RequestParam String text,
			@RequestHeader(name = "HX-Request", defaultValue = "false") boolean inPlace, Model model) {
		RehearsalPerson person = RehearsalPerson.at(as);
		if (!text.isBlank()) {
			Chat chat = chat(person);
			this.inbox.receive(chat, UUID.randomUUID().toString(), person.shownName(), text);
			this.post.deliverNow(chat.id());
		}
		return shown(person, inPlace, model);
	}

	@PostMapping("/chat/clock")
	Object clock(@RequestParam String as, @RequestParam String to,
			@RequestHeader(name = "HX-Request", defaultValue = "false") boolean inPlace, Model model) {
		RehearsalPerson person = RehearsalPerson.at(as);
		this.rehearsal.moveTo(next(to.equals("morning") ? MORNING : EVENING, zone(chat(person))));
		return shown(person, inPlace, model);
	}

	private Object shown(RehearsalPerson person, boolean inPlace, Model model) {
		if (inPlace) {
			fill(model, person);
			return LOG;
		}
		RedirectView back = new RedirectView("/?as=" + person.address() + "#answer");
		back.setStatusCode(HttpStatus.SEE_OTHER);
		return (View) back;
	}

	private Instant next(LocalTime time, ZoneId zone) {
		ZonedDateTime now = this.rehearsal.now().atZone(zone);
		ZonedDateTime today = ZonedDateTime.of(now.toLocalDate(), time, zone);
		return (today.isAfter(now) ? today : ZonedDateTime.of(now.toLocalDate().plusDays(1), time, zone)).toInstant();
	}

	private int fill(Model model, RehearsalPerson person) {
		Chat chat = chat(person);
		ZoneId zone = zone(chat);
		List<ChatLine> lines = ChatLine.of(this.inbox.of(chat.id()), this.outbox.of(chat.id()));
		model.addAttribute("person", person);
		model.addAttribute("people", RehearsalPerson.values());
		model.addAttribute("lines", lines);
		model.addAttribute("choices", ChatLine.openChoices(lines));
		model.addAttribute("zone", zone);
		model.addAttribute("now", CLOCK.format(this.rehearsal.now().atZone(zone)));
		model.addAttribute("dogName",
				this.households.carerIn(chat.id())
					.map(Carer::householdId)
					.map((household) -> this.households.dogsOf(household).get(0).name())
					.orElse("a dog"));
		return lines.size();
	}

	private Chat chat(RehearsalPerson person) {
		return this.chats.at(BrowserChannel.NAME, person.address());
	}

	private ZoneId zone(Chat chat) {
		return this.households.carerIn(chat.id())
			.map((carer) -> this.households.dogsOf(carer.householdId()).get(0))
			.map(Dog::household)
			.map(Household::timeZone)
			.orElse(ZoneOffset.UTC);
	}

}
