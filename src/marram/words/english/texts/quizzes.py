"""Quizzes: questions with several answers, and why each is right or wrong."""

TEXTS: dict[str, str] = {
    "answer": "{total}; {next}",
    "answer_alone": "{total}",
    "option": "{letter}  {words}",
    "right": "This is the ruling.",
    "until": "So ruled the Rules of {edition}.",
    "if_told": "It would be right, had this been told: {sentence}",
    "local_rule_otherwise": "It would be right, were it otherwise with Model Local Rule {code}.",
    "solutions": "Answers",
    "solution": "{number}. {letter}: {headline}",
    "wrong": "{letter}: {why}",
    "rests_on": "It rests on: {citations}",
    # The page
    "title": "Quiz, question {number}",
    "number": "Question {number}",
    "choose": "What is the ruling?",
    "next": "Next question",
    "other": "Other questions",
    "same_address": "This address gives the same question to everybody who opens it.",
    "correct": "Right.",
    "not_correct": "Not right.",
    "chosen": "your answer",
    "why": "Why",
    "full_case": "The case with its ruling",
}
