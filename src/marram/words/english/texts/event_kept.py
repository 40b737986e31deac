"""What the commands of ``marram event`` say beyond what the desk says."""

TEXTS: dict[str, str] = {
    "entered": "Entered as number {number} of the log: {kind}",
    "answer": "Answer with 'marram event answer', such as {answer} ({fact}).",
    "scorer": "from the course",
    "to_settle": "to be settled",
    "holes_kept": "Kept as version {number} of the day.",
    "conditions.desk": "Results and new rulings go by it at once, at a desk that is running too; rulings already given keep what they were given under.",
    "unchanged": "Nothing changed since the starting times were published.",
}
