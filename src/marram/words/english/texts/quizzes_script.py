"""Learning by questions: the words of its script."""

TEXTS: dict[str, str] = {
    "loading": "A question is drawn up …",
    "due": "{due} due again · {learned} of {all} learned so far",
    "here": "Without the desk: from the questions kept on this phone.",
    "held": "Questions are kept on this phone: it can ask without the desk.",
    "none": "No question is kept on this phone yet. Open this page once with the desk in reach.",
    "right": "Right.",
    "wrong": "Not right.",
    "chosen": "your answer",
    "why": "Why",
    "rests_on": "It rests on: {citations}",
    "again": "It is asked again on {day}.",
    "soon": "It is asked again today.",
    "later": "When it is asked again is worked out once the desk is in reach.",
    "next": "Next question",
    "forget": "Forget what was learned on this device",
    "forgotten": "Nothing of what was learned is kept here any more.",
}
