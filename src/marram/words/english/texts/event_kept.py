"""What the commands of ``marram event`` say beyond what the desk says."""

TEXTS: dict[str, str] = {
    "entered": "Entered as number {number} of the log: {kind}",
    "answer": "Answer with 'marram event answer', such as {answer} ({fact}).",
    "scorer": "from the course",
    "to_settle": "to be settled",
    "holes_kept": "Kept as version {number} of the day.",
    "conditions.desk": "A desk that is running rules by the changed Local Rules once it is started again; results follow at once.",
    "unchanged": "Nothing changed since the starting times were published.",
}
