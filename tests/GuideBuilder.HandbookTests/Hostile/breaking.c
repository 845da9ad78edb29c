/* Laid before the system's library (LD_PRELOAD): counts the calls that change something below the folder BREAK_IN and, from the
   BREAK_AT-th on, lets each fail with the error BREAK_WITH, or ends the program there if BREAK_WITH is "kill". A disk without
   room, and a program without handles, can still take files away. Writes how many calls there were to the file BREAK_COUNT when
   the program ends. */
#define _GNU_SOURCE
#include <dlfcn.h>
#include <errno.h>
#include <fcntl.h>
#include <limits.h>
#include <signal.h>
#include <stdarg.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

static int calls;

static int below(const char *path) {
  const char *in = getenv("BREAK_IN");
  return in && path && strncmp(path, in, strlen(in)) == 0;
}

static int fails(const char *path, int removes) {
  const char *at = getenv("BREAK_AT"), *with = getenv("BREAK_WITH");
  if (!below(path)) return 0;
  int call = __sync_add_and_fetch(&calls, 1);
  if (!at || !with || call < atoi(at)) return 0;
  if (strcmp(with, "kill") == 0) kill(getpid(), SIGKILL);
  if (removes && (atoi(with) == ENOSPC || atoi(with) == EMFILE)) return 0;
  errno = atoi(with);
  return 1;
}

static int fails_at(int fd) {
  char link[64], path[PATH_MAX + 1];
  snprintf(link, sizeof link, "/proc/self/fd/%d", fd);
  ssize_t length = readlink(link, path, PATH_MAX);
  if (length < 0) return 0;
  path[length] = 0;
  return fails(path, 0);
}

__attribute__((destructor)) static void tell(void) {
  const char *file = getenv("BREAK_COUNT");
  FILE *out = file ? fopen(file, "w") : NULL;
  if (out) { fprintf(out, "%d", calls); fclose(out); }
}

#define NEXT(result, name, ...) static result (*next)(__VA_ARGS__); if (!next) next = (result (*)(__VA_ARGS__))dlsym(RTLD_NEXT, #name)

#define BY_DESCRIPTOR(result, name, declared, types, given) \
  result name declared { NEXT(result, name, types); return fails_at(fd) ? -1 : next given; }
#define TYPES(...) __VA_ARGS__

BY_DESCRIPTOR(ssize_t, write, (int fd, const void *from, size_t n), TYPES(int, const void *, size_t), (fd, from, n))
BY_DESCRIPTOR(ssize_t, pwrite, (int fd, const void *from, size_t n, off_t at), TYPES(int, const void *, size_t, off_t), (fd, from, n, at))
BY_DESCRIPTOR(ssize_t, pwrite64, (int fd, const void *from, size_t n, off64_t at), TYPES(int, const void *, size_t, off64_t), (fd, from, n, at))
BY_DESCRIPTOR(int, fsync, (int fd), TYPES(int), (fd))
BY_DESCRIPTOR(int, syncfs, (int fd), TYPES(int), (fd))
BY_DESCRIPTOR(int, fchmod, (int fd, mode_t mode), TYPES(int, mode_t), (fd, mode))

#define BY_NAME(name, removes, declared, types, given) \
  int name declared { NEXT(int, name, types); return fails(path, removes) ? -1 : next given; }

BY_NAME(mkdir, 0, (const char *path, mode_t mode), TYPES(const char *, mode_t), (path, mode))
BY_NAME(rmdir, 1, (const char *path), TYPES(const char *), (path))
BY_NAME(unlink, 1, (const char *path), TYPES(const char *), (path))
BY_NAME(chmod, 0, (const char *path, mode_t mode), TYPES(const char *, mode_t), (path, mode))
BY_NAME(rename, 0, (const char *path, const char *to), TYPES(const char *, const char *), (path, to))
BY_NAME(renameat2, 0, (int one, const char *path, int other, const char *to, unsigned flags), TYPES(int, const char *, int, const char *, unsigned), (one, path, other, to, flags))
BY_NAME(linkat, 0, (int one, const char *path, int other, const char *to, int flags), TYPES(int, const char *, int, const char *, int), (one, path, other, to, flags))

/* Only an opening that makes a file changes something. */
static mode_t mode_of(int flags, va_list rest) { return flags & O_CREAT ? va_arg(rest, mode_t) : 0; }

#define OPENING(name) \
  int name(const char *path, int flags, ...) { \
    NEXT(int, name, const char *, int, ...); \
    va_list rest; va_start(rest, flags); mode_t mode = mode_of(flags, rest); va_end(rest); \
    return flags & O_CREAT && fails(path, 0) ? -1 : next(path, flags, mode); }

OPENING(open)
OPENING(open64)
