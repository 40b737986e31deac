"""The desk out of reach: the book walked on the phone, what is recorded there until it arrives, and the page for the pocket."""
