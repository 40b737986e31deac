"""What the commands of ``marram event`` say beyond what the desk says."""

TEXTS: dict[str, str] = {
    "entered": "Entered as number {number} of the log: {kind}",
    "answer": "Answer with 'marram event answer', such as {answer} ({fact}).",
    "scorer": "from the course",
    "to_settle": "to be settled",
    "holes_kept": "Kept as version {number} of the day.",
    "unchanged": "Nothing changed since the starting times were published.",
}
