/* The kernel of model.mjs twice: by tables as in tables.mjs, and by exact inversion as in exact.mjs, draw by draw.
 * Reads the tables from a file, draws, and prints the time of a future, the means and the generator's state. */
#define _POSIX_C_SOURCE 199309L
#include <math.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

enum { MONTHS = 120, ROW = 128, PARTS = 24, TO_A_VEHICLE = 12, GUIDE_BITS = 11, QUANTILES = 4096, SPREADS = 3 };

static double quantiles[SPREADS * (QUANTILES + 1)], worth[PARTS * ROW], numbers[PARTS * 5], discount[ROW];
static int32_t last[PARTS * 2 * ROW], spreadAt[PARTS];
static uint8_t guide[PARTS * 2 << GUIDE_BITS];

static uint32_t s0, s1, s2, s3;

static inline uint32_t rotl(uint32_t x, int k) { return (x << k) | (x >> (32 - k)); }

/* xoshiro128++ */
#define NEXT(out)                                                                                                      \
  do {                                                                                                                 \
    out = rotl(a0 + a3, 7) + a0;                                                                                       \
    const uint32_t shifted = a1 << 9;                                                                                  \
    a2 ^= a0;                                                                                                          \
    a3 ^= a1;                                                                                                          \
    a1 ^= a2;                                                                                                          \
    a0 ^= a3;                                                                                                          \
    a2 ^= shifted;                                                                                                     \
    a3 = rotl(a3, 11);                                                                                                 \
  } while (0)

static long byTables(long n, double *cost) {
  uint32_t a0 = s0, a1 = s1, a2 = s2, a3 = s3, w;
  long events = 0;
  for (long i = 0; i < n; i++) {
    double sum = 0;
    for (int j = 0; j < PARTS; j++) {
      if (j == TO_A_VEHICLE) {
        cost[2 * i] = sum;
        sum = 0;
      }
      const int32_t *row = last + 2 * j * ROW;
      const double *spread = quantiles + spreadAt[j];
      NEXT(w);
      int32_t u = (int32_t)(w >> 1);
      int m = guide[(2 * j << GUIDE_BITS) | (u >> (31 - GUIDE_BITS))];
      while (u > row[m]) m++;
      row += ROW;
      int month = m;
      while (month <= MONTHS) {
        events++;
        NEXT(w);
        const double *at = spread + (w >> 20);
        const double bill = at[0] + (double)(int32_t)(w & 0xfffff) * 0x1p-20 * (at[1] - at[0]);
        sum += bill * worth[j * ROW + month];
        NEXT(w);
        u = (int32_t)(w >> 1);
        m = guide[((2 * j + 1) << GUIDE_BITS) | (u >> (31 - GUIDE_BITS))];
        while (u > row[m]) m++;
        month += m;
      }
    }
    cost[2 * i + 1] = sum;
  }
  s0 = a0, s1 = a1, s2 = a2, s3 = a3;
  return n * PARTS + 2 * events;
}

static double ratio(const double above[8], const double below[8], double x) {
  double a = 0, b = 0;
  for (int i = 7; i >= 0; i--) {
    a = a * x + above[i];
    b = b * x + below[i];
  }
  return a / b;
}

/* Wichura, algorithm AS 241 (PPND16), Applied Statistics 37(3), 1988. */
static double normalQuantile(double u) {
  static const double middle[2][8] = {
      {3.3871328727963665, 133.14166789178438, 1971.5909503065513, 13731.69376550946, 45921.95393154987,
       67265.7709270087, 33430.57558358813, 2509.0809287301227},
      {1, 42.31333070160091, 687.1870074920579, 5394.196021424751, 21213.794301586597, 39307.89580009271,
       28729.085735721943, 5226.495278852854}};
  static const double shoulder[2][8] = {
      {1.4234371107496835, 4.630337846156546, 5.769497221460691, 3.6478483247632045, 1.2704582524523684,
       0.2417807251774506, 0.022723844989269184, 0.0007745450142783414},
      {1, 2.053191626637759, 1.6763848301838038, 0.6897673349851, 0.14810397642748008, 0.015198666563616457,
       0.0005475938084995345, 1.0507500716444169e-9}};
  static const double tail[2][8] = {
      {6.657904643501103, 5.463784911164114, 1.7848265399172913, 0.29656057182850487, 0.026532189526576124,
       0.0012426609473880784, 2.7115555687434876e-5, 2.0103343992922881e-7},
      {1, 0.599832206555888, 0.1369298809227358, 0.014875361290850615, 0.0007868691311456133,
       1.8463183175100548e-5, 1.421511758316446e-7, 2.0442631033899397e-15}};
  const double q = u - 0.5;
  if (fabs(q) <= 0.425) {
    const double r = 0.180625 - q * q;
    return q * ratio(middle[0], middle[1], r);
  }
  const double r = sqrt(-log(q < 0 ? u : 1 - u));
  const double z = r <= 5 ? ratio(shoulder[0], shoulder[1], r - 1.6) : ratio(tail[0], tail[1], r - 5);
  return q < 0 ? -z : z;
}

/* Lives to the instant; what they cost is paid, and discounted, at the end of the month they end in. */
static long exactly(long n, double *cost) {
  uint32_t a0 = s0, a1 = s1, a2 = s2, a3 = s3, w;
  long draws = 0;
  double times[1024];
  for (long i = 0; i < n; i++) {
    double sum = 0;
    for (int j = 0; j < PARTS; j++) {
      if (j == TO_A_VEHICLE) {
        cost[2 * i] = sum;
        sum = 0;
      }
      const double *part = numbers + 5 * j;
      const double shape = part[0], scale = part[1], bill = part[3], spread = part[4];
      int count = 0;
      double at = 0, clock = part[2];
      for (;;) {
        NEXT(w);
        draws++;
        const double rest = -log1p(-(w + 0.5) * 0x1p-32);
        at += scale * pow(pow(clock / scale, shape) + rest, 1 / shape) - clock;
        if (!(at <= MONTHS)) break;
        times[count++] = at;
        clock = 0;
      }
      for (int k = 0; k < count; k++) {
        NEXT(w);
        draws++;
        const double z = normalQuantile((w + 0.5) * 0x1p-32);
        const double ends = ceil(times[k]);
        sum += bill * exp(spread * z - spread * spread / 2) * discount[ends < 1 ? 1 : (int)ends];
      }
    }
    cost[2 * i + 1] = sum;
  }
  s0 = a0, s1 = a1, s2 = a2, s3 = a3;
  return draws;
}

static void take(FILE *from, void *into, size_t bytes) {
  if (fread(into, 1, bytes, from) != bytes) exit(2);
}

/* kernel TABLES tables|exact FUTURES S0 S1 S2 S3 */
int main(int argc, char **argv) {
  if (argc != 8) return 2;
  FILE *file = fopen(argv[1], "rb");
  if (!file) return 2;
  take(file, quantiles, sizeof quantiles);
  take(file, worth, sizeof worth);
  take(file, numbers, sizeof numbers);
  take(file, discount, sizeof discount);
  take(file, last, sizeof last);
  take(file, spreadAt, sizeof spreadAt);
  take(file, guide, sizeof guide);
  fclose(file);
  const long n = atol(argv[3]);
  s0 = strtoul(argv[4], 0, 10), s1 = strtoul(argv[5], 0, 10);
  s2 = strtoul(argv[6], 0, 10), s3 = strtoul(argv[7], 0, 10);
  double *cost = calloc(2 * n, sizeof *cost);
  if (!cost) return 2;
  memset(cost, 1, 2 * n * sizeof *cost);
  struct timespec from, to;
  clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &from);
  const long draws = strcmp(argv[2], "exact") == 0 ? exactly(n, cost) : byTables(n, cost);
  clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &to);
  double keep = 0, replace = 0;
  for (long i = 0; i < n; i++) keep += cost[2 * i], replace += cost[2 * i + 1];
  const double ns = ((to.tv_sec - from.tv_sec) * 1e9 + (to.tv_nsec - from.tv_nsec)) / n;
  printf("{\"ns\": %.3f, \"keep\": %.17g, \"replace\": %.17g, \"draws\": %ld, \"state\": [%u, %u, %u, %u]}\n", ns,
         keep / n, replace / n, draws, s0, s1, s2, s3);
  free(cost);
  return 0;
}
