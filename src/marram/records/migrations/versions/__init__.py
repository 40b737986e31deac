"""The migrations, one file each, the oldest first by their number; a file that was released is never changed."""
