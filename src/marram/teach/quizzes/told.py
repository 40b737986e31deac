"""Why an answer is right or wrong, in words."""

from marram.rules.engine.request import fact_named
from marram.teach.quizzes.quiz import Answer, Question
from marram.words.telling import is_told, told
from marram.words.texts import text


def letter(number: int) -> str:
    """Return the letter of an answer, from 0 on."""
    return "ABCDEFGH"[number]


def why_not(question: Question, answer: Answer) -> str:
    """Return when an answer would have been right: with one thing otherwise, or under an older edition."""
    if answer.edition:
        return text("quizzes.until", edition=answer.edition)
    if not answer.fact:
        return text("quizzes.right")
    if answer.fact.startswith("local_rule_") or not is_told(fact_named(answer.fact)):
        return text("quizzes.local_rule_otherwise", code=fact_named(answer.fact).source)
    return text("quizzes.if_told", sentence=told(answer.fact, answer.token, question.situation.player))
