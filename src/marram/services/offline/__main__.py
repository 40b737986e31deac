"""Writes the book under the conditions of an address to standard output: in a process of its own, beside a desk that serves."""

import sys
from datetime import date
from urllib.parse import parse_qsl

from marram.services.cases.conditions import Conditions, read_conditions
from marram.services.offline.book import book_bytes

if __name__ == "__main__":
    given = dict(parse_qsl(sys.argv[1], keep_blank_values=True))
    sys.stdout.buffer.write(book_bytes(read_conditions(given, Conditions(date.fromisoformat(given["on"])))))
