"""Words for Rule 9."""

PROVISIONS: dict[str, str] = {
    "9.2b(2)": "A person or outside influence counts as the cause only when that is known or virtually certain; otherwise natural forces are taken to have moved the ball.",
    "9.3": "A ball moved by natural forces is played from where it comes to rest, without penalty.",
    "9.4b": "A player who lifts, deliberately touches or moves the ball at rest gets one penalty stroke, unless an exception applies.",
}

NOTES: dict[str, str] = {
    "replace_before_stroke": "Put the ball back on its original spot.",
}
