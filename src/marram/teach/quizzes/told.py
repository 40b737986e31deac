"""Why an answer is right or wrong, in words."""

from marram.rules.engine.request import fact_named
from marram.rules.incidents import incident
from marram.teach.quizzes.drafting import Answer, Question
from marram.teach.quizzes.near import LOCAL_RULE, NOT_IN_FORCE
from marram.teach.situations.situation import Situation
from marram.words.language import translate
from marram.words.telling import is_told, told
from marram.words.texts import text


def letter(number: int) -> str:
    """Return the letter of an answer, from 0 on."""
    return "ABCDEFGH"[number]


def why_not(question: Question, answer: Answer) -> str:
    """Return when an answer would have been right: with something otherwise, in another form of play, before an edition."""
    near, one = answer.near, question.situation
    if near is None:
        return text("quizzes.right")
    if near.misjudged:
        return text("quizzes.other_penalty")
    if near.edition:
        return text("quizzes.until", edition=near.edition)
    if near.incident:
        return text("quizzes.of_another", title=translate()(incident(near.incident).title).rstrip(".?"))
    if not near.otherwise:
        return text("quizzes.other_form", form=text(f"situations.form.{near.form.value}"))
    otherwise = [each for each in near.otherwise if not _is_only_absent(each, one)]
    sentences = [_told(name, token, one.player) for name, token in otherwise]
    untold = [fact_named(name).source for name, _ in otherwise if not _is_told(name)]
    if untold:
        return text("quizzes.local_rule_otherwise", code=untold[0])
    return text("quizzes.if_told", sentence=" ".join(sentences))


def _is_only_absent(each: tuple[str, str], one: Situation) -> bool:
    """Whether a Local Rule that the situation does not speak of would not be in force."""
    name, token = each
    return name.startswith(LOCAL_RULE) and token == NOT_IN_FORCE and name not in one.facts


def _is_told(name: str) -> bool:
    return not name.startswith(LOCAL_RULE) and is_told(fact_named(name))


def _told(name: str, token: str, player: str) -> str:
    return told(name, token, player) if _is_told(name) else ""
