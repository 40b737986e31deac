"""Words for Rule 13."""

PROVISIONS: dict[str, str] = {
    "13.1d(1)": "There is no penalty for accidentally moving a ball or ball-marker on the putting green; it is replaced.",
}
