"""Print the questions that nobody has read yet, or enter what a reader says of them; only what was found good is asked.

    python scripts/questions_to_read.py [--seed 1] [--count 100] [--again] [INCIDENT ...] > to_read.txt
    python scripts/questions_to_read.py --enter verdicts.txt

With ``--acts`` the acts that stories about strokes are put together of. A verdict is a line with what stands before the question,
then + for good or - for not good. Good is what could stand in a printed examination as it is: one right answer on the facts told,
told as a person would, and not to be guessed by its form.
"""

import argparse
import sys
from pathlib import Path

from marram.errors import InputError
from marram.teach.quizzes.approved import Kept, read_so_far
from marram.teach.quizzes.reading import entered, incidents_asked, unread, unread_acts

if __name__ == "__main__":
    asked = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    asked.add_argument("incidents", nargs="*", help="only these incidents")
    asked.add_argument("--acts", action="store_true", help="acts of stories about strokes")
    asked.add_argument("--seed", type=int, default=1)
    asked.add_argument("--count", type=int, default=100, help="drafted for each incident; of acts in all")
    asked.add_argument("--again", action="store_true", help="those that were refused, once they are mended")
    asked.add_argument("--enter", type=Path, metavar="FILE", help="enter the verdicts of a file")
    given = asked.parse_args()
    kind = Kept.ACTS if given.acts else Kept.QUESTIONS
    read = read_so_far(kind)
    try:
        if given.enter is not None:
            now = entered(given.enter.read_text(encoding="utf-8").splitlines(), read)
            Path(str(kind.file)).write_text(now.text(kind), encoding="utf-8")
        elif given.acts:
            for act in unread_acts(given.seed, given.count, read, again=given.again):
                sys.stdout.write(act.shown() + "\n\n")
        else:
            for one in unread(
                given.incidents or incidents_asked(), given.seed, given.count, read, again=given.again
            ):
                sys.stdout.write(one.shown() + "\n\n")
    except (InputError, OSError) as error:
        sys.exit(str(error))
