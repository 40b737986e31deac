"""Print the questions that nobody has read yet, or enter what a reader says of them; only what was found good is asked.

    python scripts/questions_to_read.py [--seed 1] [--count 100] [--again] [INCIDENT ...] > to_read.txt
    python scripts/questions_to_read.py --enter verdicts.txt

A verdict is a line with what stands before the question, then + for good or - for not good. Good is what could stand in a printed
examination as it is: one right answer on the facts told, told as a person would, and not to be guessed by its form.
"""

import argparse
import sys
from pathlib import Path

from marram.errors import InputError
from marram.teach.quizzes.approved import FILE, read_so_far
from marram.teach.quizzes.reading import entered, incidents_asked, unread

if __name__ == "__main__":
    asked = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    asked.add_argument("incidents", nargs="*", help="only these incidents")
    asked.add_argument("--seed", type=int, default=1)
    asked.add_argument("--count", type=int, default=100, help="questions drafted for each incident")
    asked.add_argument("--again", action="store_true", help="those that were refused, once they are mended")
    asked.add_argument("--enter", type=Path, metavar="FILE", help="enter the verdicts of a file")
    given = asked.parse_args()
    try:
        if given.enter is not None:
            now = entered(given.enter.read_text(encoding="utf-8").splitlines(), read_so_far())
            Path(str(FILE)).write_text(now.text(), encoding="utf-8")
        else:
            names = given.incidents or incidents_asked()
            for one in unread(names, given.seed, given.count, read_so_far(), again=given.again):
                sys.stdout.write(one.shown() + "\n\n")
    except (InputError, OSError) as error:
        sys.exit(str(error))
