"""The path to a ruling as a picture: what is written in it."""

TEXTS: dict[str, str] = {
    "title": "The way to this ruling",
    "step": "{asked} {answer}",
    "end": "Ruling: {headline}",
    "by": "Asked by {citation}",
    "otherwise": "Otherwise: {answers}",
    "more.one": "and one more answer that leads elsewhere",
    "more.several": "and {count} more answers that lead elsewhere",
    "ruling": "So the ruling is",
}
