"""How an answer is said: what a ruling costs and what follows, or what it finds, alike in form, so that none stands out."""

from collections.abc import Iterable, Mapping
from dataclasses import replace

from marram.rules.facts.conditions import FormOfPlay
from marram.rules.finding_of import finding_of
from marram.rules.findings import Finding
from marram.rules.penalty import Who
from marram.rules.relief_family import family
from marram.rules.relief_option import ReliefKind, ReliefOption
from marram.rules.ruling import Action, Ruling
from marram.teach.quizzes.apart import MAY_BE_TAKEN_AWAY
from marram.teach.quizzes.of_incident import offers_free_relief
from marram.teach.quizzes.prices_of_relief import in_order, priced_apart, step_families
from marram.teach.situations.situation import Situation
from marram.words.headline import choices, forced_costs, headline, next_words, total_words
from marram.words.messages import say, term
from marram.words.penalties import penalties_in_short
from marram.words.texts import capital, text

IN_SHORT = {
    "correct_with_ball_in_play": "with_ball_in_play",
    "correct_wrong_ball_when_lost": "under_stroke_and_distance",
    "put_relief_right": "put_down_right",
}
"""Mistakes that are put right, by what answers say of them: in full they would stand out by their length."""
_OF_BOTH = frozenset({"anothers_conditions_altered"})
"""Incidents of which player and opponent, or another player, can bear the same penalty for what they did together."""
SCORED_ALONE = frozenset({Finding.HOLE_LOST, Finding.MAXIMUM_SCORE, Finding.NO_POINTS})
"""What a hole comes to where each is scored on its own (Rule 21): as an answer among penalties, for the form of play names it."""
_WHO_ALONE: Mapping[str, str] = {
    "four_ball_disqualified": "quizzes.partner_alone",
    "four_ball_penalty": "quizzes.alone",
    "partner_acted_on_ball": "quizzes.alone",
    "partner_arrived_late": "quizzes.absent_alone",
    "partner_stood_behind": "quizzes.alone",
}
"""Incidents that tell of two partners, and which of them bears a penalty alone: "this partner" could be either."""
_OF_ONE_PLAYER = frozenset({"shared_caddie_in_breach"})
"""Incidents that tell of two players: an answer says by name that one of them alone is penalised."""
FURTHER_RELIEF = frozenset({"dropped_in_penalty_area"})
"""Incidents that ask for further relief, which costs more than the relief under way: not its price in all (Rule 17.2a)."""
SAID_WITH_FINDING = frozenset({"swing_in_doubt"})
"""Incidents of which an answer says what is found as well: whether it was a stroke is what is asked."""
ALTERNATIVE = "alternative_to_stroke_and_distance"
"""The incident of Model Local Rule E-5: "the other ball" of an answer is the one dropped under it."""
_OF_ALTERNATIVE = {"put_relief_right": "drop_as_local_rule_asks"}
"""What is put right with such a ball."""
_SAID_OF_NOTE: Mapping[str, str] = {
    "provisional_may_be_played_on": "search_goes_on",
    "choose_one_as_provisional": "choose_one_of_them",
    "second_ball_has_taken_three": "ball_teed_off_second",
}
"""Notes of rulings that say with which ball it goes on, and the text that says so in an answer."""
_HOLED_ALREADY = frozenset({"provisional_ball_holed"})
"""Incidents of a provisional ball that nobody goes on with, for it is in the hole."""
_OF_OTHERS = frozenset({Who.OPPONENT, Who.OTHER_PLAYER, Who.OTHER_SIDE})
_LEAVES = "accumulated_loose_impediments"
"""The incident of leaves that lie deep, of which Model Local Rule F-14 makes ground under repair."""
_ALTERNATIVE_RELIEF = "E-5"
"""The Local Rule of relief instead of going back, which is named: "take relief" would not say which."""
_NOT_PROVISIONAL = frozenset({"ball_after_provisional"})
"""Incidents of a ball that took the place of the provisional one, and was announced as none (Clarification 18.3a/3)."""
_SAID_ALREADY = frozenset({Finding.DID_NOT_HELP_PARTNER})
"""Findings that only say again what is told."""


def decided_by_finding(ruling: Ruling, form: FormOfPlay) -> bool:
    """Whether what a ruling finds is all it says: nothing is penalised, nothing is to be done with a ball."""
    silent = ruling.action in {None, Action.PLAY_ON, Action.HOLE_OVER, Action.HOLED}
    if finding_of(ruling) in (*SCORED_ALONE, *_SAID_ALREADY):
        return False
    return silent and total_words(ruling, form).casefold() not in headline(ruling, form).casefold()


def said_as_answer(
    one: Situation, ruling: Ruling, form: FormOfPlay, by_finding: bool, *, whose: bool = False
) -> str:
    """Return an answer in words: what a ruling comes to and what follows, alike in form, so that none stands out.

    Where free relief is in question, an answer without it says so: else it would only be less complete. What may be had for a
    penalty it does not name: the area of the ball that is told would name it as well, and no other answer does.

    Args:
        one: the situation.
        ruling: the ruling that the answer says.
        form: the form of play it was given in.
        by_finding: whether what is found is asked for.
        whose: whether a penalty of the player's is said to be that player's, beside others' penalties.
    """
    if by_finding:
        finding = None if decided_by_finding(ruling, form) else finding_of(ruling)
        return headline(ruling, form) if finding is None else text("quizzes.finding", finding=term(finding))
    if one.incident in SAID_WITH_FINDING:
        return headline(ruling, form)
    finding = finding_of(ruling)
    if finding in SCORED_ALONE:
        return text("quizzes.answer_alone", total=term(finding))
    if one.incident in _OF_BOTH:
        ruling = _of_each(ruling)
    total, then = capital(total_words(ruling, form)), next_words(ruling, form)
    total = _for_the_player(one, ruling, total, whose)
    then = _then_exactly(one, ruling, form) or then
    instead = _provisional_instead(ruling)
    if not instead and priced_apart(ruling) and len(forced_costs(ruling, form)) > 1:
        return of_the_player(one, _each_at_its_price(ruling, form))
    if (
        not instead
        and priced_apart(one.ruling)
        and ruling.action is one.ruling.action
        and len(in_order(ruling)) > 1
    ):
        then = text("quizzes.or").join(_at_one_price(ruling))
    if "play_out_both_balls" in ruling.notes:
        then = text("quizzes.second_ball_too")
    if _free_or_paid(ruling) or instead:
        total = capital(penalties_in_short(ruling.penalties, form))
        then = then if instead else say("TERMS", "next.or").join(choices(ruling))
    if one.incident in FURTHER_RELIEF and then and any(option.penalty for option in ruling.relief):
        then = text("quizzes.more", next=then)
    if finding is Finding.ADD_PENALTY_STROKES:
        total = text("quizzes.left_out_added")
    if ruling.action is Action.HOLED:
        then = text("quizzes.holed")
    if ruling.action is Action.PLAY_FROM_TEEING_AREA and one.incident == "holes_out_of_order":
        then = text("quizzes.from_right_tee")
    if "go_on_under_that_rule" in ruling.notes:
        then = text("quizzes.goes_elsewhere")
    if then and ruling.action is Action.CORRECT_MISTAKE and len(ruling.corrections) == 1:
        short = {**IN_SHORT, **_OF_ALTERNATIVE} if one.incident == ALTERNATIVE else IN_SHORT
        in_short = short.get(ruling.corrections[0].what)
        then = text(f"quizzes.{in_short}") if in_short else then
        if "first_ball_counts_second_ignored" in ruling.notes:
            then = text("quizzes.hole_out_first")
    if then and one.incident == ALTERNATIVE and ruling.action is Action.PLAY_OTHER_BALL:
        then = text("quizzes.dropped_under_local_rule")
    if MAY_BE_TAKEN_AWAY.intersection(ruling.notes):
        then = text(f"quizzes.{_what_is_loose(one)}{_taken_away(ruling)}")
    if then and not ruling.penalties and _denies_free_relief(one, ruling):
        key = "no_free"
        if ruling.action is Action.PLAY_AS_IT_LIES_OR_TAKE_RELIEF:
            key = (
                f"{_what_is_loose(one)}away_no_free_but_paid"
                if MAY_BE_TAKEN_AWAY.intersection(ruling.notes)
                else "no_free_but_paid"
            )
        then = text(f"quizzes.{key}", next=then) if key == "no_free" else text(f"quizzes.{key}")
    key = "quizzes.answer" if then else "quizzes.answer_alone"
    return of_the_player(one, text(key, total=total, next=then) if then else text(key, total=total))


def _of_each(ruling: Ruling) -> Ruling:
    """Return a ruling by which two bear the same penalty as one for each of them: said twice, it would stand out by its length."""
    levels = {(each.kind, each.strokes) for each in ruling.penalties}
    if len(ruling.penalties) < 2 or len(levels) > 1:
        return ruling
    return replace(ruling, penalties=(replace(ruling.penalties[0], who=Who.EACH_PLAYER),))


def _what_is_loose(one: Situation) -> str:
    """Return what stands before the key of what may be taken away: of leaves beside a ball, "it" would be the ball."""
    return "leaves." if one.incident == _LEAVES else ""


def _taken_away(ruling: Ruling) -> str:
    """Return the key of what is said where what is in the way may be taken away: with relief besides, or in the teeing area."""
    if "free" in step_families(ruling):
        return "taken_away_or_free"
    if ruling.action is Action.PLAY_FROM_TEEING_AREA:
        return "taken_away_in_teeing_area"
    return "taken_away"


def _each_at_its_price(ruling: Ruling, form: FormOfPlay) -> str:
    """Return what relief that must be taken comes to, each price with the relief that is had for it."""
    parts: list[str] = []
    for price in sorted({option.penalty for option in ruling.relief}):
        at_price = replace(ruling, relief=tuple(each for each in ruling.relief if each.penalty == price))
        then = _named_alike(at_price)
        total = penalties_in_short(ruling.penalties, form, relief={price})
        parts.append(
            text("quizzes.to", total=total if not parts else total[0].lower() + total[1:], next=then)
        )
    return text("quizzes.or").join(parts)


def _at_one_price(ruling: Ruling) -> list[str]:
    """Return what relief is had, as it is named where the first of it and the rest have two prices."""
    again = in_order(ruling)[0]
    parts = [
        replace(ruling, relief=tuple(each for each in ruling.relief if (family(each) == again) is first))
        for first in (True, False)
    ]
    return [_named_alike(each) for each in parts]


def _named_alike(ruling: Ruling) -> str:
    """Return what relief is taken, by the one name of its options, or at large."""
    families = in_order(ruling)
    if all(each.citation == _ALTERNATIVE_RELIEF for each in ruling.relief):
        return text("quizzes.under_e_5")
    return say("TERMS", f"next.family.{families[0] if len(families) == 1 else 'other'}")


def _for_the_player(one: Situation, ruling: Ruling, total: str, whose: bool) -> str:
    """Return what a ruling comes to with the name of the player, where it is that player's alone and others are named."""
    alone = one.incident in _OF_ONE_PLAYER
    if not (alone or whose) or {each.who for each in ruling.penalties} != {Who.PLAYER}:
        return total
    return text("quizzes.of_one_player" if alone else "quizzes.for_player", total=total, player=one.player)


def names_others(rulings: Iterable[Ruling]) -> bool:
    """Whether a penalty of one of these rulings is somebody else's: one that names nobody would be read as the same."""
    return any(each.who in _OF_OTHERS for ruling in rulings for each in ruling.penalties)


def _then_exactly(one: Situation, ruling: Ruling, form: FormOfPlay) -> str:
    """Return what follows where the step's own name leaves open with which ball; empty elsewhere."""
    said = next((key for note, key in _SAID_OF_NOTE.items() if note in ruling.notes), "")
    then = next_words(ruling, form)
    if said and then not in ("", term(Action.HOLE_OVER, ".short")):
        return text(f"quizzes.{said}")
    if then == term(Action.HOLE_OVER, ".short") and "other_partners_score_counts" in ruling.notes:
        return text("quizzes.other_partners_score")
    if then == say("TERMS", "partner_plays_on"):
        return text("quizzes.other_partner_plays_on")
    instead = _provisional_instead(ruling)
    if not instead or then == term(Action.HOLE_OVER, ".short"):
        return ""
    rest = tuple(option for option in ruling.relief if option not in instead)
    ways = choices(replace(ruling, relief=rest)) if rest else [then]
    counts = text("quizzes.let_provisional_count") if one.incident in _HOLED_ALREADY else ""
    going_on = counts or choices(replace(ruling, relief=instead))[0]
    if one.incident in _NOT_PROVISIONAL:
        going_on = going_on.replace(
            say("TERMS", "next.family.provisional"), term(Action.PLAY_OTHER_BALL, ".short")
        )
    return say("TERMS", "next.or").join([*ways, going_on])


def _provisional_instead(ruling: Ruling) -> tuple[ReliefOption, ...]:
    """Return the option to go on with the provisional ball, where something must be done and that is the other way (Rule 18.3c(2))."""
    if ruling.action not in (Action.REPLACE, Action.TAKE_RELIEF):
        return ()
    return tuple(option for option in ruling.relief if option.kind is ReliefKind.PROVISIONAL)


def _free_or_paid(ruling: Ruling) -> bool:
    """Whether relief must be taken that is free in one way and has a price in another: which is which is then said."""
    prices = {option.penalty for option in ruling.relief}
    return ruling.action is Action.TAKE_RELIEF and 0 in prices and len(prices) > 1


def of_the_player(one: Situation, words: str) -> str:
    """Return words of a ruling with the player by name, where a partner is told of who is not meant."""
    if one.incident not in _WHO_ALONE:
        return words
    return words.replace(term(Who.ONE_PARTNER), text(_WHO_ALONE[one.incident], player=one.player))


def _denies_free_relief(one: Situation, ruling: Ruling) -> bool:
    """Whether an answer has to say that it leaves no free relief; what may be moved out of the way is no such question."""
    if "free" in step_families(ruling) or not offers_free_relief(one.incident):
        return False
    if ruling.action is Action.PLAY_AS_IT_LIES_OR_TAKE_RELIEF:
        return True
    asked = "free" in step_families(one.ruling) or finding_of(ruling) is Finding.NO_FREE_RELIEF
    return ruling.action is Action.PLAY_AS_IT_LIES and asked
