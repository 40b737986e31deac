"""The notice to players: what is in force on the day, in our own words."""

from collections.abc import Iterator, Sequence

from marram.competition.conditions.choices import Score, TieMethod
from marram.competition.conditions.duties import duty_of
from marram.competition.conditions.event_file import EventFile
from marram.paper.event.officials_sheet import place_words, role_words
from marram.paper.event.on_paper import OnPaper
from marram.paper.sheet import Cell, Column, Sheet, Table, Words
from marram.rules.facts.conditions import FormOfPlay, Sides, form_of_play
from marram.rules.local_rules.adoption import entry_named
from marram.words.language import translate
from marram.words.local_rules import statement
from marram.words.messages import say
from marram.words.texts import capital, count_text, long_day_words, text


def notice_sheet(event: OnPaper) -> Sheet:
    """Return the notice to players of a round."""
    found = event.found
    parts = [
        Words(text("paper.form"), tuple(form_sentences(found))),
        local_rules_part(found, text("paper.local")),
    ]
    if found.notice_to_players:
        parts.append(Words(text("paper.committee"), found.notice_to_players, listed=True))
    parts += [
        Words(text("paper.pace"), tuple(_pace(event))),
        Words(text("paper.suspension"), tuple(_suspension(found)), listed=True),
        Words(text("paper.ties"), tuple(tie_sentences(found))),
        Words(text("paper.closes"), (found.closes or text("paper.closes.unknown"),)),
    ]
    if found.code_of_conduct:
        parts.append(Words(text("paper.conduct"), tuple(_conduct(found)), listed=True))
    return Sheet(
        text("paper.title.notice"),
        event.name,
        event.about,
        event.day_words,
        (*parts, *((officials_part(found),) if found.officials else ())),
        text("paper.foot.notice"),
    )


def officials_part(found: EventFile) -> Table:
    """Return who officiates, with the role of each."""
    columns = (
        Column(text("paper.column.name"), 2, names_row=True),
        Column(text("paper.column.role"), 3),
    )
    duties = map(duty_of, found.officials)
    rows = tuple(
        (Cell(one.name, strong=True), Cell(", ".join(filter(None, (role_words(one.role), place_words(one))))))
        for one in duties
    )
    return Table(text("paper.officials"), columns, rows, text("paper.officials.none"))


def form_sentences(found: EventFile) -> Iterator[str]:
    """Yield the form of play, what counts, the rounds and the cut."""
    if found.form_of_play is None:
        yield text("paper.form.unknown")
    else:
        form = translate()(form_of_play.answers[found.form_of_play])
        yield text("paper.form.is", who=_who(found.sides), form=form)
    if found.variation:
        yield text(f"paper.form.variation.{found.variation.value}")
    if found.form_of_play is not FormOfPlay.MATCH_PLAY and found.scores:
        which = "both" if len(set(found.scores)) == 2 else found.scores[0].value
        yield text(f"paper.form.scores.{which}")
    if found.allowance is not None and Score.NET in found.scores:
        yield text("paper.form.allowance", percent=found.allowance)
    if found.maximum:
        yield text(f"paper.form.maximum.{found.maximum.by.value}", number=found.maximum.number)
    rounds = found.every_round()
    if len(rounds) > 1:
        yield count_text("paper.form.rounds", len(rounds))
        for day, name in rounds:
            yield text("paper.form.round", name=name, day=long_day_words(day))
    if cut := found.cut:
        if cut.within is not None:
            yield text("paper.form.cut.within", round=cut.after_round, within=cut.within)
        else:
            key = "paper.form.cut.ties" if cut.ties else "paper.form.cut.places"
            yield text(key, round=cut.after_round, places=cut.places)
        if len(set(found.scores)) > 1:
            yield text(f"paper.form.cut.score.{(cut.score or found.scores[0]).value}")
    if found.divisions:
        yield text("paper.form.divisions", names=", ".join(one.name for one in found.divisions))
    if found.teams:
        yield text("paper.form.teams", size=found.teams.size, counting=found.teams.counting)


def local_rules_part(found: EventFile, heading: str, *, titles_only: bool = False) -> Words:
    """Return the Local Rules in force by their codes, each with its title and, in our own words, what it says."""
    if not found.local_rules:
        unknown = found.local_rules is None
        return Words(heading, (text("paper.local.unknown" if unknown else "paper.local.none"),))
    leads, sentences = [], []
    for code in found.local_rules:
        entry = entry_named(code)
        assert entry is not None  # the conditions were read strictly
        title = translate()(entry.title)
        says = statement(entry) or (say("PROVISIONS", entry.citation) if entry.computed else "")
        leads.append(code.strip().upper())
        sentences.append(
            text("paper.local.rule", title=title, statement=says)
            if says and not titles_only
            else text("paper.local.title", title=title)
        )
    return Words(heading, tuple(sentences), lead=tuple(leads))


def tie_sentences(found: EventFile) -> Iterator[str]:
    """Yield how ties are decided."""
    if found.form_of_play is FormOfPlay.MATCH_PLAY:
        may = found.match_may_end_tied
        yield text(
            "paper.ties.unknown"
            if may is None
            else "paper.ties.may_end_tied"
            if may
            else "paper.ties.extra_holes"
        )
        return
    ties = found.ties
    if ties is None or not (ties.first_place or ties.other_places):
        yield text("paper.ties.unknown")
    elif ties.first_place == ties.other_places:
        yield text("paper.ties.all", methods=_methods(ties.first_place))
    else:
        if ties.first_place:
            yield text("paper.ties.first", methods=_methods(ties.first_place))
        if ties.other_places:
            yield text("paper.ties.other", methods=_methods(ties.other_places))


def _methods(methods: Sequence[TieMethod]) -> str:
    return _then([text(f"paper.ties.method.{one.value}") for one in methods])


def _then(steps: Sequence[str]) -> str:
    words = ""
    for one in steps:
        words = text("paper.then", before=words, after=one) if words else one
    return words


def _who(sides: Sides | None) -> str:
    if sides is None:
        return ""
    if sides is Sides.INDIVIDUAL:
        return text("paper.form.individual")
    return text("paper.form.sides", sides=text(f"conditions.sides.{sides.value}"))


def _pace(event: OnPaper) -> Iterator[str]:
    yield event.found.pace_policy or text("paper.pace.none")
    minutes = event.found.minutes_in(event.round)
    if minutes is not None:
        yield count_text("paper.pace.minutes", minutes)
    yield say("PROVISIONS", "5.6b(1)")


def _suspension(found: EventFile) -> Iterator[str]:
    adopted = {code.strip().upper() for code in found.local_rules or ()}
    yield text("paper.suspension.j1" if "J-1" in adopted else "paper.suspension.usual")
    yield say("PROVISIONS", "5.7b(1)")
    yield say("PROVISIONS", "5.7b(2)")
    yield text("suspension.own_judgement")
    yield text("suspension.people_first")


def _conduct(found: EventFile) -> Iterator[str]:
    for one in found.code_of_conduct:
        steps = [text(f"paper.conduct.step.{step.value}") for step in one.penalties]
        yield text("paper.conduct.rule", about=capital(one.about), penalties=_then(steps))
